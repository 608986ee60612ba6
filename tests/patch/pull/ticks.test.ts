import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_PATCH, type PatchSettings, type PullItem } from '../../../src/layout/patch.ts';
import { pullList } from '../../../src/patch/pull/pullList.ts';
import {
  awaited,
  clearTicks,
  setTick,
  stillMissing,
  strikeList,
  tickAllOut,
} from '../../../src/patch/pull/ticks.ts';
import { kit } from '../../rig/kits.ts';
import { deepFreeze } from '../../support/deepFreeze.ts';

const layout = kit('five-piece-two-racks');
const needs = { cables: [{ length: 5000, count: 9 }], sandbags: 0 };
const list = pullList(layout, DEFAULT_PATCH, needs);
const start = deepFreeze(DEFAULT_PATCH);
const allOut = deepFreeze(tickAllOut(start, list));
const pencil: PullItem = { kind: 'mic', which: 'pencil-condenser' };
const backAll = (patch: PatchSettings): PatchSettings =>
  list.reduce((ticked, line) => setTick(ticked, line, { back: line.total }), patch);

describe('strike', () => {
  it('before anything goes out everything is to be taken and nothing is missing', () => {
    const lines = strikeList(list, []);
    expect(lines.map(({ toTake }) => toTake)).toEqual(list.map(({ total }) => total));
    expect(stillMissing(lines)).toEqual([]);
  });

  it('when all is out all is missing; when all is back nothing is', () => {
    expect(stillMissing(strikeList(list, allOut.ticks))).toHaveLength(list.length);
    expect(strikeList(list, allOut.ticks).map(({ toTake }) => toTake)).toEqual(list.map(() => 0));
    expect(stillMissing(strikeList(list, backAll(allOut).ticks))).toEqual([]);
  });

  it('says what is missing, and by how many', () => {
    const short = setTick(backAll(allOut), pencil, { back: 2 });
    expect(stillMissing(strikeList(list, short.ticks))).toEqual([
      { ...pencil, total: 4, out: 4, back: 2, toTake: 0, missing: 2, over: 0 },
    ]);
  });

  it('Q1: what went out is missing even when the kit no longer has it', () => {
    const fewer = pullList(
      { ...layout, mics: layout.mics.filter(({ micClass }) => micClass !== pencil.which) },
      DEFAULT_PATCH,
      needs,
    );
    const line = strikeList(fewer, allOut.ticks).find(
      ({ kind, which }) => kind === pencil.kind && which === pencil.which,
    );
    expect(line).toEqual({ ...pencil, total: 0, out: 4, back: 0, toTake: 0, missing: 4, over: 0 });
  });

  it('Q3: nothing is missing before anything is back, then what came back short, all once it is over', () => {
    const words = (patch: PatchSettings, isOver: boolean) => {
      const lines = strikeList(list, patch.ticks);
      return lines.map((line) => [line.which, awaited(line, lines, isOver)] as const);
    };
    expect(new Set(words(allOut, false).map(([, word]) => word))).toEqual(new Set(['out']));
    const short = setTick(allOut, pencil, { back: 2 });
    for (const [which, word] of words(short, false)) {
      expect(word).toBe(which === pencil.which ? 'missing' : 'stillOut');
    }
    expect(new Set(words(short, true).map(([, word]) => word))).toEqual(new Set(['missing']));
  });

  it('Q2: one more of one sort does not make up for another', () => {
    const kick: PullItem = { kind: 'mic', which: 'kick-dynamic' };
    const mixed = setTick(setTick(backAll(allOut), pencil, { back: 3 }), kick, { back: 3 });
    const lines = strikeList(list, mixed.ticks);
    expect(stillMissing(lines).map(({ which, missing }) => [which, missing])).toEqual([
      ['pencil-condenser', 1],
    ]);
    expect(lines.find(({ which }) => which === kick.which)?.over).toBe(1);
  });

  it('out = back + missing - over on every line, for any ticks', () => {
    const count = fc.nat({ max: 9 });
    const ticked = fc.array(fc.tuple(fc.nat({ max: list.length - 1 }), count, count));
    fc.assert(
      fc.property(ticked, (some) => {
        const patch = some.reduce<PatchSettings>((to, [index, out, back]) => {
          const line = list[index];
          return line ? setTick(to, line, { out, back }) : to;
        }, start);
        for (const line of strikeList(list, patch.ticks)) {
          expect(line.out).toBe(line.back + line.missing - line.over);
          expect(Math.min(line.missing, line.over)).toBe(0);
        }
      }),
    );
  });
});

describe('edits of ticks', () => {
  it('count in whole numbers from 0', () => {
    expect(setTick(start, pencil, { out: 2.4, back: -3 }).ticks).toEqual([
      { ...pencil, out: 2, back: 0 },
    ]);
    expect(setTick(start, pencil, { out: Number.NaN })).toBe(start);
  });

  it('keep no line without a count, and are the same object without effect', () => {
    const one = deepFreeze(setTick(start, pencil, { out: 1 }));
    expect(setTick(one, pencil, { out: 0 })).toEqual(start);
    expect(setTick(one, pencil, { out: 1 })).toBe(one);
    expect(setTick(one, pencil, {})).toBe(one);
    expect(tickAllOut(allOut, list)).toBe(allOut);
    expect(clearTicks(start)).toBe(start);
    expect(clearTicks(allOut)).toEqual(start);
  });

  it('taking all leaves more than the list asks for as it is', () => {
    const more = setTick(start, pencil, { out: 7, back: 1 });
    expect(tickAllOut(more, list).ticks).toContainEqual({ ...pencil, out: 7, back: 1 });
  });
});
