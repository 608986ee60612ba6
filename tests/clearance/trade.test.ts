import { describe, expect, it } from 'vitest';
import { createClearances, verdictOf } from '../../src/clearance/clearances.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { rimClip } from '../../src/layout/catalogue/kits/startingKit.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Drum } from '../../src/layout/pieces/drum.ts';
import { bodyOf } from '../../src/player/body.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { startingKits } from './kits.ts';

/**
 * Facts of the trade: common practice, no source. Checked on every starting kit with the usual clip: a compact dynamic that looks
 * over the hoop from 45 mm above the head.
 */
const AUDIENCE = 90;
const kits = startingKits.filter(({ pieces }) => pieces.some(({ kind }) => kind === 'rackTom'));
const named = kits.map((kit) => [kit.name, kit] as const);
const drums = ({ pieces }: Layout, kind: 'snare' | 'rackTom'): readonly Drum[] =>
  pieces.filter((piece): piece is Drum => piece.kind === kind);

function verdictAt(layout: Layout, drum: Drum, angle: number) {
  const mic = {
    id: 'clip',
    name: 'Clip',
    micClass: 'compact-dynamic',
    hears: [drum.id],
    mount: rimClip(drum.id, angle),
    input: null,
  };
  const motion = motionOf(layout.player, layout.pieces);
  return verdictOf(reachOf(motion, placeMic(mic, layout)).clearance, layout.margin);
}

const direction = (from: { x: number; y: number }, to: { x: number; y: number }): number =>
  (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
/** Directions from a drum to the player's two shoulders: where the sticks come from. */
const shoulders = ({ player }: Layout, drum: Drum): readonly number[] =>
  [1, -1].map((h) => direction(drum, { x: (h * bodyOf(player).biacromialBreadth) / 2, y: 0 }));

describe.each(named)('common practice, no source: %s', (_, kit) => {
  it('a clip on the audience side of a rack tom is clear', () => {
    for (const tom of drums(kit, 'rackTom')) {
      expect(verdictAt(kit, tom, AUDIENCE), tom.name).toBe('clear');
    }
  });

  it('a clip on the side of the player of a rack tom is struck where a stick comes from, and clear nowhere there', () => {
    for (const tom of drums(kit, 'rackTom')) {
      const verdicts = shoulders(kit, tom).map((angle) => verdictAt(kit, tom, angle));
      expect(verdicts, tom.name).toContain('struck');
      for (const angle of [240, 250, 260, 270, 280, 290, 300]) {
        expect(verdictAt(kit, tom, angle), `${tom.name} at ${angle}`).not.toBe('clear');
      }
    }
  });

  it('a snare mic over the edge between hi-hat and rack tom is clear', () => {
    const [snare] = drums(kit, 'snare');
    const hiHat = kit.pieces.find((piece) => piece.kind === 'hiHat');
    const racks = drums(kit, 'rackTom');
    if (!snare || hiHat?.kind !== 'hiHat') throw new Error('a snare and a hi-hat were expected');
    const towardHat = (direction(snare, hiHat) + 360) % 360;
    const [nextToHat = Number.NaN] = racks
      .map((rack) => direction(snare, rack))
      .toSorted((a, b) => Math.abs(a - towardHat) - Math.abs(b - towardHat));
    expect(verdictAt(kit, snare, (towardHat + nextToHat) / 2)).toBe('clear');
  });

  it('a snare mic over the edge toward the player is struck', () => {
    const [snare] = drums(kit, 'snare');
    if (!snare) throw new Error('a snare was expected');
    for (const angle of shoulders(kit, snare)) {
      expect(verdictAt(kit, snare, angle)).toBe('struck');
    }
  });

  it('the mics it starts with are all clear', () => {
    const rows = createClearances()(kit, buildRig(kit).mics);
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter(({ verdict }) => verdict !== 'clear').map(({ mic }) => mic)).toEqual([]);
  });
});
