import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Acoustics, createAcoustics } from '../../src/acoustics/acoustics.ts';
import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { changeClip, moveMic } from '../../src/layout/edit/mics.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import { fivePiece, kits } from '../rig/kits.ts';
import { deepFreeze } from '../support/deepFreeze.ts';
import { randomKit } from '../support/randomKit.ts';
import { only } from './scenes.ts';

const acousticsOf = (layout: Layout) => createAcoustics()(layout, buildRig(layout));

/** Every number of an acoustics that does not depend on where the kit stands or which side is left, by its path. */
function figures({
  close,
  hearing,
  kicks,
  timing,
  pairs,
  overheads,
}: Acoustics): Map<string, number> {
  const found = new Map<string, number>();
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'number') found.set(path, value);
    else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) {
        if (!['from', 'point', 'axis', 'azimuth', 'balance'].includes(key))
          walk(inner, `${path}.${key}`);
      }
    }
  };
  // Pairs of equal harm may change places.
  const byName = Object.fromEntries(
    pairs.map((pair) => [[pair.mic, pair.other].sort().join(), { ...pair, spacing: pair.spacing }]),
  );
  walk({ close, hearing, kicks, timing, byName, overheads }, '');
  return found;
}

function expectSameFigures(one: Acoustics, other: Acoustics): void {
  const [expected, found] = [figures(one), figures(other)];
  expect([...found.keys()]).toEqual([...expected.keys()]);
  const apart = [...expected].filter(([path, value]) => {
    const there = found.get(path) ?? Number.NaN;
    // Half a turn out of phase is the same both ways round.
    const turn = path.endsWith('.phase') ? Math.abs(Math.abs(value - there) - 360) : 1;
    return !(there === value || Math.abs(there - value) < 1e-5 || turn < 1e-5);
  });
  expect(apart).toEqual([]);
}

function shifted(layout: Layout, dx: number, dy: number): Layout {
  const by = <P extends { readonly x: number; readonly y: number }>(p: P): P => ({
    ...p,
    x: p.x + dx,
    y: p.y + dy,
  });
  return {
    ...layout,
    pieces: layout.pieces.map((piece) => ('x' in piece ? by(piece) : piece)),
    mics: layout.mics.map((mic) => {
      const { mount } = mic;
      if (mount.kind === 'stand') {
        return { ...mic, mount: { ...mount, base: by(mount.base), tip: by(mount.tip) } };
      }
      return mount.kind === 'plateOnDeck' ? { ...mic, mount: by(mount) } : mic;
    }),
  };
}

describe('what mics hear does not depend on', () => {
  it('where the kit stands', () => {
    for (const layout of kits) {
      expectSameFigures(acousticsOf(layout), acousticsOf(shifted(layout, 250, -125)));
    }
  });

  it('which side is left', () => {
    for (const layout of kits)
      expectSameFigures(acousticsOf(layout), acousticsOf(mirrorKit(layout)));
  });
});

describe('createAcoustics', () => {
  it('tells of every mic and every piece, in the order of the layout', () => {
    for (const layout of kits) {
      const { hearing, close } = acousticsOf(layout);
      expect(hearing.map(({ mic }) => mic)).toEqual(layout.mics.map(({ id }) => id));
      const sounding = layout.pieces.filter(({ kind }) => kind !== 'pedal' && kind !== 'throne');
      for (const { heard } of hearing) {
        expect(heard.map(({ piece }) => piece)).toEqual(sounding.map(({ id }) => id));
      }
      expect(close.map(({ mic }) => mic)).toEqual(
        hearing.filter(({ role }) => role === 'close').map(({ mic }) => mic),
      );
    }
  });

  it('has no number that is not one, on any kit', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const wrong = [...figures(acousticsOf(layout))].filter(([, value]) => Number.isNaN(value));
        expect(wrong).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('always gives what computing from nothing gives', () => {
    const acoustics = createAcoustics();
    const build = createRigBuilder();
    const clip = only(fivePiece.mics.find(({ mount }) => mount.kind === 'clip'));
    const stand = only(fivePiece.mics.find(({ name }) => name.startsWith('Overhead')));
    const layouts = [
      fivePiece,
      changeClip(fivePiece, clip.id, { height: 70 }),
      moveMic(fivePiece, stand.id, { x: 60, y: 30 }),
      {
        ...fivePiece,
        pieces: fivePiece.pieces.map((piece) =>
          'z' in piece ? { ...piece, z: piece.z + 20 } : piece,
        ),
      },
      { ...fivePiece, venue: { ...fivePiece.venue, temperature: 31 } },
      { ...fivePiece, mics: fivePiece.mics.slice(3) },
      fivePiece,
      ...kits,
    ];
    for (const layout of layouts) {
      expect(acoustics(layout, build(layout))).toEqual(acousticsOf(layout));
    }
    const quieter = { ...DEFAULT_CHOICES, style: 'jazz' as const, pieceLevels: { snare: 90 } };
    expect(acoustics(fivePiece, build(fivePiece), quieter)).toEqual(
      createAcoustics()(fivePiece, buildRig(fivePiece), quieter),
    );
  });

  it('computes only a moved mic anew', () => {
    const acoustics = createAcoustics();
    const build = createRigBuilder();
    const clip = only(fivePiece.mics.find(({ mount }) => mount.kind === 'clip'));
    const before = acoustics(fivePiece, build(fivePiece));
    const moved = changeClip(fivePiece, clip.id, { height: 70 });
    const after = acoustics(moved, build(moved));
    const anew = after.close.filter((mic) => !before.close.includes(mic));
    expect(anew.map(({ mic }) => mic)).toEqual([clip.id]);
    expect(after.overheads).toBe(before.overheads);
  });

  it('changes nothing it is given', () => {
    const frozen = deepFreeze(structuredClone(fivePiece));
    expect(() => acousticsOf(frozen)).not.toThrow();
  });

  it('a quieter piece is quieter in every mic by as much, and spills less', () => {
    const rig = buildRig(fivePiece);
    const choices = {
      ...DEFAULT_CHOICES,
      pieceLevels: { snare: DEFAULT_CHOICES.levels.snare - 10 },
    };
    const [before, after] = [DEFAULT_CHOICES, choices].map((one) =>
      createAcoustics()(fivePiece, rig, one),
    );
    for (const [i, { heard }] of (before?.hearing ?? []).entries()) {
      for (const { piece, level } of heard) {
        const then = after?.hearing[i]?.heard.find((one) => one.piece === piece)?.level;
        expect(then).toBeCloseTo(piece === 'snare' ? level - 10 : level, 9);
      }
    }
    for (const [i, close] of (before?.close ?? []).entries()) {
      const then = after?.close[i]?.isolation ?? Number.NaN;
      if (close.source === 'snare') expect(then).toBeCloseTo(close.isolation - 10, 9);
      else expect(then).toBeGreaterThan(close.isolation);
    }
  });
});
