import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import {
  changeClip,
  deleteMic,
  moveMicTip,
  renameMic,
  setInput,
} from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { addSignOff } from '../../src/layout/edit/signOffs.ts';
import { moveBox, setPlayer } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { signedState } from '../../src/layout/signedState.ts';
import type { Answer } from '../../src/layout/signOff.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { remedyOf, takeRemedy } from '../../src/report/remedy.ts';
import { signOffJson } from '../../src/report/signOffJson.ts';
import { createSignOffReader, micsToAsk } from '../../src/report/signOffState.ts';
import { createRigBuilder } from '../../src/rig/buildRig.ts';

const kit = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') as Layout;
const analyse = createAnalyst();
const stateOf = (layout: Layout) => analyse(layout).signOff;
const ask = (layout: Layout) => micsToAsk(layout, stateOf(layout));
const all = kit.mics.map(({ id }) => id);

const sign = (layout: Layout, answers: readonly Answer[] = [], consent = true) =>
  addSignOff(layout, {
    name: 'Drummer',
    at: '2031-05-17T18:30:00Z',
    consent,
    answers: [...answers],
    notes: '',
  });
const wishFor = (mic: string, wish: { x: number; y: number } | null): Answer => ({
  about: 'mic',
  mic,
  name: kit.mics.find(({ id }) => id === mic)?.name ?? mic,
  answer: 'move',
  note: 'In my way',
  wish,
});
const moveRack = (layout: Layout) => changeClip(layout, 'mic-rack-1', { angle: 100 });

describe('the state of a sign-off', () => {
  test('is always that of a reader that has seen nothing before, after every edit', () => {
    const edits: readonly ((layout: Layout) => Layout)[] = [
      (l) => sign(l, [wishFor('mic-snare', { x: 10, y: 20 })]),
      moveRack,
      (l) => changeClip(l, 'mic-rack-1', { angle: 110 }),
      (l) => movePiece(l, 'rack-1', { x: -100, y: 640 }),
      (l) => setPlayer(l, { seatHeight: 560 }),
      (l) => renameMic(l, 'mic-rack-1', 'Rack'),
      (l) => deleteMic(l, 'mic-rack-2'),
      () => sign(kit),
      (l) => sign(moveRack(l), [wishFor('mic-snare', null)], false),
      (l) => ({ ...l, pieces: l.pieces.toReversed(), mics: l.mics.slice(1) }),
    ];
    const build = createRigBuilder();
    const read = createSignOffReader();
    let layout = kit;
    const kinds = edits.map((edit) => {
      layout = edit(layout);
      const rig = build(layout);
      const state = read(layout, rig);
      expect(state).toEqual(createSignOffReader()(layout, rig));
      // N5, which places nothing, agrees.
      expect(signedState(layout)).toBe(state.kind);
      return state.kind;
    });
    expect(new Set(kinds)).toEqual(new Set(['holds', 'stale', 'withheld', 'reworked']));
  });

  test('none: all mics are asked about (G1)', () => {
    expect(stateOf(kit).kind).toBe('none');
    expect(ask(kit)).toEqual(all);
    expect(analyse(kit).findings.filter(({ code }) => code.startsWith('sign-off'))).toEqual([]);
  });

  test('holds while box, cables and names change, and asks about nothing (G4)', () => {
    const signed = sign(kit);
    expect(stateOf(signed).kind).toBe('holds');
    const renamed = renameMic(
      setInput(moveBox(signed, { x: 0, y: 900 }), 'mic-snare', null),
      'mic-snare',
      'Sn',
    );
    expect(stateOf(renamed).kind).toBe('holds');
    expect(ask(renamed)).toEqual([]);
    expect(stateOf(sign(kit, [], false)).kind).toBe('withheld');
  });

  test('stale after a change, asks only about the mics that changed, and holds again when it is undone (G3, G5)', () => {
    const stale = moveRack(sign(kit));
    const state = stateOf(stale);
    expect(state.kind).toBe('stale');
    expect(ask(stale)).toEqual(['mic-rack-1']);
    const { findings } = analyse(stale);
    expect(findings.find(({ code }) => code === 'sign-off-stale')).toMatchObject({
      about: ['mic-rack-1'],
      numbers: { mics: 1, pieces: 0, player: 0 },
    });
    const mount = kit.mics.find(({ id }) => id === 'mic-rack-1')?.mount;
    if (mount?.kind !== 'clip') throw new Error('a clip');
    expect(stateOf(changeClip(stale, 'mic-rack-1', mount)).kind).toBe('holds');
    expect(stateOf(sign(stale)).kind).toBe('holds');
  });

  test('without consent it is never stale: changed since, it asks again about what changed (G3)', () => {
    const asked: Answer = { about: 'lane', answer: 'move', note: '' };
    const reworked = moveRack(sign(kit, [asked], false));
    expect(stateOf(reworked).kind).toBe('reworked');
    expect(ask(reworked)).toEqual(['mic-rack-1']);
    const codes = analyse(reworked).findings.map(({ code }) => code);
    expect(codes).toContain('sign-off-reworked');
    expect(codes).not.toContain('sign-off-stale');
  });

  test('refused without a word of what should change: none of it was approved, all is asked again (G5)', () => {
    const refused = sign(kit, [], false);
    expect(stateOf(refused).kind).toBe('withheld');
    expect(ask(refused)).toEqual(all);
    expect(ask(moveRack(refused))).toEqual(all);
    // Another one before it, that was agreed to, does not stand in for it.
    expect(ask(sign(sign(kit), [], false))).toEqual(all);
  });

  test('a piece that moved asks about what it carries; another body about every mic; another name about none', () => {
    const rack = kit.pieces.find(({ id }) => id === 'rack-1');
    if (rack?.kind !== 'rackTom') throw new Error('a rack tom');
    expect(ask(movePiece(sign(kit), 'rack-1', { x: rack.x, y: rack.y + 10 }))).toEqual([
      'mic-rack-1',
    ]);
    expect(ask(setPlayer(sign(kit), { stature: 1900 }))).toEqual(all);
    const named = setPlayer(sign(kit), { name: 'Someone else' });
    expect(stateOf(named).kind).toBe('stale');
    expect(ask(named)).toEqual([]);
  });

  test('a mic that is gone keeps the name it was asked about', () => {
    const answers = kit.mics.map(
      ({ id, name }): Answer => ({
        about: 'mic',
        mic: id,
        name,
        answer: 'fine',
        note: '',
        wish: null,
      }),
    );
    const state = stateOf(deleteMic(sign(kit, answers), 'mic-snare'));
    if (state.kind !== 'stale') throw new Error('it is stale');
    const name = kit.mics.find(({ id }) => id === 'mic-snare')?.name;
    expect(state.changes.mics).toMatchObject([{ id: 'mic-snare', change: 'gone', name }]);
  });

  test.each([
    ['another text', { signed: '{"mics":[],"pieces":[],"player":{}}' }, 'digest'],
    ['another digest', { digest: '0'.repeat(64) }, 'digest'],
    [
      'a text that is no kit',
      {
        signed: '{"mics":[],"pieces":[],"player":{}}',
        digest: 'c7f02016715b1a491a1b89f029c5e4c2b65fc9a99027e5c027c6bd6666e7f957',
      },
      'unreadable',
    ],
  ])('broken with %s: it proves nothing and all is asked again (G2)', (_, patch, why) => {
    const signed = sign(kit);
    const broken = { ...signed, signOffs: signed.signOffs.map((one) => ({ ...one, ...patch })) };
    expect(stateOf(broken)).toMatchObject({ kind: 'broken', why });
    expect(ask(broken)).toEqual(all);
    expect(analyse(broken).findings.map(({ code }) => code)).toContain('sign-off-broken');
    expect(signOffJson(broken, stateOf(broken))).toMatchObject({ state: 'broken', toAsk: all });
  });

  test('as JSON it tells every change to the nearest thousandth of a mm or degree, and no finer', () => {
    const signed = sign(kit);
    const turns = fc.integer({ min: 1, max: 3599 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(turns, fc.double({ min: 1, max: 400, noNaN: true }), (angle, x) => {
        const moved = changeClip(movePiece(signed, 'rack-1', { x, y: 700 }), 'mic-rack-2', {
          angle,
        });
        const state = stateOf(moved);
        if (state.kind !== 'stale') throw new Error('it is stale');
        const { changes } = signOffJson(moved, state);
        for (const kind of ['mics', 'pieces'] as const) {
          expect(changes[kind].map(({ id }) => id)).toEqual(
            state.changes[kind].map(({ id }) => id),
          );
          for (const [k, told] of changes[kind].entries()) {
            for (const field of ['moved', 'base', 'turned'] as const) {
              const is = state.changes[kind][k]?.[field] ?? Number.NaN;
              expect(Math.abs(told[field] - is)).toBeLessThanOrEqual(0.000_501);
              expect(String(told[field])).toMatch(/^\d+(\.\d{1,3})?$/);
            }
          }
        }
      }),
      { numRuns: 20 },
    );
  });

  test('with a memory is the same as without', () => {
    const steps = [kit, sign(kit), moveRack(sign(kit)), sign(moveRack(kit)), kit];
    const analyst = createAnalyst();
    for (const layout of steps) {
      expect(analyst(layout).signOff).toEqual(createAnalyst()(layout).signOff);
    }
  });
});

describe('a wish', () => {
  const stand = kit.mics.find(({ mount }) => mount.kind === 'stand');
  const mount = stand?.mount;
  if (mount?.kind !== 'stand') throw new Error('the kit has a stand');
  const id = stand?.id ?? '';
  const near = { x: mount.tip.x + 20, y: mount.tip.y };

  test('is a finding with its place, and stands until its mic moves (G6)', () => {
    const signed = sign(kit, [wishFor(id, near)], false);
    const finding = analyse(signed).findings.find(({ code }) => code === 'mic-move-wished');
    expect(finding).toMatchObject({ about: [id], place: { ...near, z: mount.tip.z } });
    expect(finding?.numbers['distance']).toBeCloseTo(20, 6);
    expect(ask(signed)).toEqual([id]);
    const moved = moveMicTip(signed, id, { x: near.x + 3, y: near.y });
    expect(analyse(moved).findings.map(({ code }) => code)).not.toContain('mic-move-wished');
    expect(ask(moved)).toEqual([id]);
  });

  test('Y8: within reach is taken by one change, with the clearance that the analysis then finds', () => {
    const signed = sign(kit, [wishFor(id, near)], false);
    const report = analyse(signed);
    const finding = report.findings.find(({ code }) => code === 'mic-move-wished');
    const remedy = finding && remedyOf(finding, signed, report);
    if (remedy?.kind !== 'wish') throw new Error('there is a remedy');
    expect(remedy.short).toBeLessThan(1e-6);
    const after = takeRemedy(signed, remedy);
    const placed = analyse(after).rig.mics.find(({ mic }) => mic.id === id);
    expect(placed?.tip.x).toBeCloseTo(near.x, 6);
    const { clearance } = analyse(after).clearances.find(({ mic }) => mic === id) ?? {};
    expect(Math.abs((clearance ?? 0) - remedy.clearance)).toBeLessThan(0.2);
  });

  test('Y8: out of the boom’s reach: as near as it goes, and the stand still holds it', () => {
    const far = { x: mount.tip.x, y: mount.tip.y + 9000 };
    const signed = sign(kit, [wishFor(id, far)], false);
    const report = analyse(signed);
    const finding = report.findings.find(({ code }) => code === 'mic-move-wished');
    const remedy = finding && remedyOf(finding, signed, report);
    if (remedy?.kind !== 'wish') throw new Error('there is a remedy');
    expect(remedy.short).toBeGreaterThan(1000);
    const after = takeRemedy(signed, remedy);
    expect(analyse(after).findings.map(({ code }) => code)).not.toContain('mic-beyond-stand');
    const further = moveMicTip(after, id, { x: remedy.to.x, y: remedy.to.y + 2 });
    expect(analyse(further).findings.map(({ code }) => code)).toContain('mic-beyond-stand');
  });

  test('for a clip goes round its rim', () => {
    const rack = kit.pieces.find((piece) => piece.id === 'rack-1');
    if (rack?.kind !== 'rackTom') throw new Error('a rack tom');
    const signed = sign(kit, [wishFor('mic-rack-1', { x: rack.x - 120, y: rack.y + 60 })], false);
    const report = analyse(signed);
    const finding = report.findings.find(({ code }) => code === 'mic-move-wished');
    const remedy = finding && remedyOf(finding, signed, report);
    if (remedy?.kind !== 'wish') throw new Error('there is a remedy');
    expect(remedy.short).toBeLessThan(5);
  });

  test('without a spot has no change to offer', () => {
    const signed = sign(kit, [wishFor(id, null)], false);
    const report = analyse(signed);
    const finding = report.findings.find(({ code }) => code === 'mic-move-wished');
    expect(finding && remedyOf(finding, signed, report)).toBeNull();
  });
});
