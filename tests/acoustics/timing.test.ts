import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { speedOfSound } from '../../src/acoustics/air.ts';
import { combNulls, type Start } from '../../src/acoustics/comb.ts';
import { pathTo } from '../../src/acoustics/timing.ts';
import { along } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece, kits } from '../rig/kits.ts';
import { heardIn, micAt, only, sceneOf, smallSource, sourceIn, standAt } from './scenes.ts';

const acousticsOf = (layout: Layout) => createAcoustics()(layout, buildRig(layout));
const timingOf = (layout: Layout) => acousticsOf(layout).timing;
const block = smallSource('block', [0, 0, 1000]);

describe('H28 what is timed', () => {
  it('every close mic with every overhead, the overheads with each other, close mics of one source', () => {
    for (const layout of kits) {
      const { listeners } = heardIn(layout);
      const close = listeners.filter(({ role }) => role === 'close');
      const overheads = listeners.filter(({ role }) => role === 'overhead').length;
      const { rows, alignments } = timingOf(layout);
      const count = (kind: string) => rows.filter((row) => row.kind === kind).length;
      expect(count('closeAndOverhead')).toBe(close.length * overheads);
      expect(2 * count('overheads')).toBe(overheads * Math.max(0, overheads - 1));
      expect(alignments).toHaveLength(overheads > 0 ? close.length : 0);
      for (const row of rows.filter(({ kind }) => kind === 'overheads')) {
        expect(row.source).toBe('snare');
      }
    }
  });
});

describe('H42 harm', () => {
  it('the rows come by ripple, what no one hears last', () => {
    for (const layout of kits) {
      const { rows } = timingOf(layout);
      const harmful = rows.filter(({ harms }) => harms);
      expect(rows.slice(0, harmful.length)).toEqual(harmful);
      const ripples = harmful.map(({ ripple }) => ripple.peakToDip);
      expect(ripples).toEqual(ripples.toSorted((p, q) => q - p));
    }
  });

  it('a path difference of 8 mm notches at 21 kHz and does none, one of 9 mm at 19 kHz does', () => {
    const harmAt = (z: number) =>
      only(
        timingOf(
          sceneOf(
            [block],
            [
              micAt('near', ['block'], standAt([0, 0, 1100], [270, -90])),
              micAt('far', ['block'], standAt([0, 0, z], [270, -90])),
            ],
          ),
        ).rows[0],
      ).harms;
    expect([harmAt(1108), harmAt(1109)]).toEqual([false, true]);
  });
});

describe('H29 paths', () => {
  it('exact distances in space: Pythagorean quadruples 700 and 900 mm differ by 0.5828 ms', () => {
    const layout = sceneOf(
      [block],
      [
        micAt('near', ['block'], standAt([200, 300, 1600], [270, -90])),
        micAt('far', ['block'], standAt([100, 400, 1800], [270, -90])),
      ],
    );
    const row = only(timingOf(layout).rows[0]);
    expect(row.kind).toBe('sameSource');
    expect(row.pathDifference).toBeCloseTo(200, 9);
    // 0.5828 ms and 27.97 samples for 0.2 m at 343.2 m/s (computed); first null in mono 858 Hz.
    expect(row.delay.ms).toBeCloseTo(0.5828, 4);
    expect(row.delay.samples48).toBeCloseTo(27.97, 2);
    expect(row.nulls[0]).toBeCloseTo(858, 6);
  });

  it('a close mic at 50 mm and an overhead at 1 m: 2.768 ms, 132.87 samples at 48 kHz (computed)', () => {
    const snare = only(fivePiece.pieces.find(({ id }) => id === 'snare'));
    const crash = only(fivePiece.pieces.find(({ kind }) => kind === 'crash'));
    const { struck } = sourceIn(heardIn(fivePiece).sources, 'snare');
    const over = (height: number) => {
      const { x, y, z } = along(struck.centre, struck.normal, height);
      return [x, y, z] as const;
    };
    const low = 'z' in crash ? { ...crash, z: 1000 } : crash;
    const { rows, alignments } = timingOf(
      sceneOf(
        [snare, low],
        [
          micAt('close', ['snare'], standAt(over(50), [270, -90])),
          micAt('overhead', [crash.id, 'snare'], standAt(over(1000), [270, -90])),
        ],
      ),
    );
    const row = only(rows[0]);
    expect(row.kind).toBe('closeAndOverhead');
    expect(row.delay.ms).toBeCloseTo(2.768, 3);
    expect(row.delay.samples48).toBeCloseTo(132.87, 2);
    expect(row.delay.samples96).toBeCloseTo(265.73, 1);
    expect(alignments).toEqual([
      { mic: 'close', source: 'snare', overhead: 'overhead', delay: row.delay, rest: 0 },
    ]);
  });
});

describe('start, phase and polarity', () => {
  it('a snare from above and below starts opposite: the lower mic is tried inverted', () => {
    const { struck, depth } = sourceIn(heardIn(fivePiece).sources, 'snare');
    const at = (before: number) => {
      const { x, y, z } = along(struck.centre, struck.normal, before);
      return [x, y, z] as const;
    };
    const layout = {
      ...fivePiece,
      mics: [
        micAt('top', ['snare'], standAt(at(50), [270, -90])),
        micAt('bottom', ['snare'], standAt(at(-depth - 50), [270, 90])),
      ],
    };
    const row = only(timingOf(layout).rows[0]);
    expect([row.kind, row.start, row.sure]).toEqual(['sameSource', 'opposite', true]);
    expect(row.polarity).toEqual({ tryFirst: 'inverted', reason: 'outOfPhase' });
    // 140 mm later is 28 degrees at 190 Hz, from the 180 of the opposite start.
    expect(Math.abs(row.phase ?? 0)).toBeGreaterThan(140);
  });

  it('the nulls are those of the start, inverted those of the other', () => {
    const { air, timing } = acousticsOf(fivePiece);
    for (const row of timing.rows) {
      const other: Start = row.start === 'equal' ? 'opposite' : 'equal';
      expect(row.nulls).toEqual(combNulls(row.pathDifference, air.speed, row.start));
      expect(row.nullsInverted).toEqual(combNulls(row.pathDifference, air.speed, other));
      if (!row.sure || row.phase === null) continue;
      // In the polarity to try first the fundamentals add: their phases are less than a quarter turn apart.
      const turned = row.phase + (row.polarity.tryFirst === 'inverted' ? 180 : 0);
      expect(Math.cos((turned * Math.PI) / 180)).toBeGreaterThanOrEqual(-1e-9);
    }
  });

  it('a cymbal has no fundamental and no phase', () => {
    const hat = timingOf(fivePiece).rows.filter(({ source }) => source === 'hi-hat');
    expect(hat.length).toBeGreaterThan(0);
    for (const { fundamental, phase } of hat) expect([fundamental, phase]).toEqual([null, null]);
  });
});

describe('alignments', () => {
  it('delay a close mic until the overhead that hears its source loudest, and tell how far the others stay off', () => {
    const { listeners, sources } = heardIn(fivePiece);
    const speed = speedOfSound(fivePiece.venue.temperature);
    for (const { mic, source, overhead, delay, rest } of timingOf(fivePiece).alignments) {
      const own = sourceIn(sources, source);
      const path = (id: string) => pathTo(only(listeners.find((one) => one.id === id)), own);
      const overheads = listeners.filter(({ role }) => role === 'overhead');
      const level = (id: string) =>
        listeners.find((one) => one.id === id)?.heard.find(({ piece }) => piece === source)
          ?.level ?? 0;
      expect(level(overhead)).toBe(Math.max(...overheads.map(({ id }) => level(id))));
      expect(path(mic) + delay.ms * speed).toBeCloseTo(path(overhead), 9);
      expect(rest).toBeCloseTo(
        Math.max(...overheads.map(({ id }) => Math.abs(path(id) - path(overhead)))),
        9,
      );
    }
  });
});
