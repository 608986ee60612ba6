import { describe, expect, it } from 'vitest';
import { demo } from '../../src/layout/catalogue/kits/demo.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { judgementCounts, judgementOf, markOf } from '../../src/report/judgement.ts';
import { ledFrom, micsToLead, needsSpot, roomOf } from '../../src/report/needsSpot.ts';
import { seededKits } from '../support/randomKit.ts';
import { cutting, farFromStand, inMasts, overHead } from './cantStaySamples.ts';
import { clipInDrum } from './clipInDrum.ts';
import { findingOf, rowOf } from './madeFindings.ts';

const analyse = createAnalyst();
const kit = demo('kit');

describe('which mics need another spot', () => {
  it('one near the player does, whatever room it has from what moves', () => {
    const [layout, id] = overHead(kit, 1440);
    const report = analyse(layout);
    const [own] = report.clearances.filter(({ mic }) => mic === id);
    if (!own) throw new Error('the mic has a clearance');
    expect(own.verdict).toBe('clear');
    expect(ledFrom(own, report)).toBe('near-player');
    expect(micsToLead(report)).toEqual([id]);
    expect(roomOf(own, report)).toBeLessThan(kit.margin);
    expect(roomOf(own, report)).toBeGreaterThan(0);
  });

  it('one in its drum does and has no room there; one that only its stand cannot hold does not', () => {
    const { layout, mic } = clipInDrum(kit);
    const sunk = analyse(layout);
    expect(micsToLead(sunk)).toEqual([mic.id]);
    expect(roomOf({ mic: mic.id, clearance: 300 }, sunk)).toBe(Number.NEGATIVE_INFINITY);
    const far = farFromStand(kit);
    expect(micsToLead(analyse(far.layout))).toEqual([]);
  });

  it('one against the hardware of any piece does, and has no room there', () => {
    const all = inMasts(kit);
    expect(all.length).toBeGreaterThan(4);
    for (const { layout, id, piece } of all) {
      const report = analyse(layout);
      const [own] = report.clearances.filter(({ mic }) => mic === id);
      if (!own) throw new Error('the mic has a clearance');
      expect(ledFrom(own, report), piece).toBe('in-the-way');
      expect(micsToLead(report)).toContain(id);
      expect(roomOf(own, report)).toBe(Number.NEGATIVE_INFINITY);
    }
  });

  it('the worst come first: struck or deep in something, then tight or near the player, nothing that moves near it or not', () => {
    const clearances = [
      rowOf('near', Number.POSITIVE_INFINITY, 'clear'),
      rowOf('nearer', Number.POSITIVE_INFINITY, 'clear'),
      rowOf('tight', 15, 'tight'),
      rowOf('free', 80, 'clear'),
      rowOf('sunk', 90, 'clear'),
      rowOf('struck', -5, 'struck'),
    ];
    const findings = [
      findingOf('mic-near-player', 'warn', ['near'], { gap: 20 }),
      findingOf('mic-near-player', 'warn', ['nearer'], { gap: 10 }),
      findingOf('mic-in-shell', 'stop', ['sunk', 'drum'], { depth: 30 }),
    ];
    expect(micsToLead({ clearances, findings })).toEqual([
      'sunk',
      'struck',
      'nearer',
      'tight',
      'near',
    ]);
  });

  it('each of two that meet does, whatever room they have from what moves', () => {
    const { layout, ids } = cutting(kit);
    const report = analyse(layout);
    expect(judgementCounts(report)['in-the-way']).toBe(2);
    expect(micsToLead(report).toSorted()).toEqual(ids.toSorted());
    for (const mic of ids) {
      expect(ledFrom({ mic, verdict: 'clear' }, report)).toBe('in-the-way');
      expect(roomOf({ mic, clearance: 300 }, report)).toBe(Number.NEGATIVE_INFINITY);
    }
  });

  it('L1: those that only meet other mics come last, what was added last before what was there', () => {
    const clearances = [
      rowOf('first', 90, 'clear'),
      rowOf('sunk', 90, 'clear'),
      rowOf('second', 300, 'clear'),
      rowOf('tight', 15, 'tight'),
      rowOf('third', 70, 'clear'),
    ];
    const meet = (depth: number, ...about: readonly string[]) =>
      findingOf('mic-against-mic', 'stop', about, { depth });
    const findings = [
      findingOf('mic-in-shell', 'stop', ['sunk', 'drum'], { depth: 5 }),
      meet(40, 'first', 'sunk'),
      meet(10, 'second', 'tight'),
      meet(20, 'first', 'third'),
    ];
    expect(micsToLead({ clearances, findings })).toEqual([
      'sunk',
      'tight',
      'third',
      'second',
      'first',
    ]);
  });

  it('of random kits every mic that is marked does, but those that only their stands trouble, and no clear one', () => {
    let [marked, inTheWay] = [0, 0];
    for (const layout of seededKits(30, 5)) {
      const report = analyse(layout);
      for (const each of report.clearances) {
        const judged = judgementOf(each, report);
        if (markOf(judged) === 'clear') expect(needsSpot(each, report)).toBe(false);
        if (judged === 'clear' || judged === 'not-held') continue;
        expect(ledFrom(each, report)).toBe(judged);
        if (judged === 'in-the-way') inTheWay += 1;
        else marked += 1;
      }
    }
    expect(marked).toBeGreaterThan(15);
    expect(inTheWay).toBeGreaterThan(15);
  });
});
