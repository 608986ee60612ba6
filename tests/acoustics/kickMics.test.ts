import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { delayOf } from '../../src/acoustics/comb.ts';
import { along } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { kickFrame } from '../../src/rig/pieces/kickFrame.ts';
import { fivePiece, kit, kits } from '../rig/kits.ts';
import { micAt, only, standAt } from './scenes.ts';

const acousticsOf = (layout: Layout) => createAcoustics()(layout, buildRig(layout));
const kick = only(fivePiece.pieces.find((piece) => piece.kind === 'kick'));
if (kick.kind !== 'kick') throw new TypeError('a kick');
const frame = kickFrame(kick);

/** The five-piece kit with two kick mics on the drum's axis only, each `behind` the front head, looking at the beater. */
function withMics(behind: readonly number[]): Layout {
  const mics = behind.map((depth, i) => {
    const { x, y, z } = along(frame.frontHead, frame.front, -depth);
    return micAt(
      `mic-${i}`,
      ['kick'],
      standAt([x, y, z], [kick.kind === 'kick' ? kick.turn + 180 : 0, 0]),
    );
  });
  return { ...fivePiece, mics };
}

describe('kick mics', () => {
  it('tells depth behind the front head and the way to the batter head', () => {
    const [{ mics }] = [only(acousticsOf(withMics([100, -60])).kicks[0])];
    const [inside, outside] = [only(mics[0]), only(mics[1])];
    expect([inside.place, outside.place]).toEqual(['inside', 'front']);
    expect(inside.depth).toBeCloseTo(100, 6);
    expect(outside.depth).toBeCloseTo(-60, 6);
    for (const mic of mics) {
      expect(mic.depth + mic.toBatterHead).toBeCloseTo(kick.kind === 'kick' ? kick.depth : 0, 6);
      expect(mic.toBeater).toBeCloseTo(mic.toBatterHead, 6);
    }
  });

  it('two mics inside and outside: path difference, delay, equal start', () => {
    const layout = withMics([100, -60]);
    const { pairs } = only(acousticsOf(layout).kicks[0]);
    expect(pairs).toHaveLength(1);
    const pair = only(pairs[0]);
    expect(pair.pathDifference).toBeCloseTo(160, 6);
    expect(pair.delay).toEqual(delayOf(pair.pathDifference, acousticsOf(layout).air.speed));
    expect(pair.start).toBe('equal');
    expect(pair.polarity).toEqual({ tryFirst: 'normal', reason: 'inPhase' });
  });

  it('a mic at the beater is behind, one beside the shell beside', () => {
    const mics = only(acousticsOf(withMics([1000])).kicks[0]).mics;
    expect(mics.map(({ place }) => place)).toEqual(['behind']);
    const beside = along(frame.middle, frame.right, kick.kind === 'kick' ? kick.diameter : 0);
    const layout = {
      ...fivePiece,
      mics: [micAt('mic', ['kick'], standAt([beside.x, beside.y, beside.z], [0, 0]))],
    };
    expect(only(acousticsOf(layout).kicks[0]).mics[0]?.place).toBe('beside');
  });

  it('every kick of every kit is told, with its mics and whether it has a port', () => {
    for (const layout of kits) {
      const told = acousticsOf(layout).kicks;
      expect(told.map((one) => one.kick)).toEqual(
        layout.pieces.filter(({ kind }) => kind === 'kick').map(({ id }) => id),
      );
      for (const { mics } of told) {
        expect(mics.map(({ mic }) => mic)).toEqual(
          layout.mics.filter(({ hears }) => hears[0] === 'kick').map(({ id }) => id),
        );
      }
    }
    expect(acousticsOf(kit('four-piece-jazz')).kicks[0]?.hasPort).toBe(false);
    expect(acousticsOf(fivePiece).kicks[0]?.hasPort).toBe(true);
  });
});
