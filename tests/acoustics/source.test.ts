import { describe, expect, it } from 'vitest';
import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { sourceOf } from '../../src/acoustics/source.ts';
import { distance, dot } from '../../src/geometry/vector.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece, kit, kits } from '../rig/kits.ts';
import { heardIn, only, sourceIn } from './scenes.ts';

describe('H18 pieces as sources', () => {
  it('every piece but pedals and throne sounds, in the order of the layout', () => {
    for (const layout of kits) {
      const sounding = layout.pieces.filter(({ kind }) => kind !== 'pedal' && kind !== 'throne');
      expect(heardIn(layout).sources.map(({ piece }) => piece)).toEqual(sounding);
    }
  });

  it("a piece's surfaces share all of its energy", () => {
    for (const { surfaces } of kits.flatMap((layout) => heardIn(layout).sources)) {
      expect(surfaces.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    }
  });

  it('a snare has both heads, a cymbal one surface, a kick two heads and its port', () => {
    const { sources } = heardIn(fivePiece);
    const names = (id: string) => sourceIn(sources, id).surfaces.map(({ name }) => name);
    expect(names('snare')).toEqual(['batter', 'resonant']);
    expect(names('ride')).toEqual(['cymbal']);
    expect(names('kick')).toEqual(['batter', 'resonant', 'port']);
    const jazz = heardIn(kit('four-piece-jazz')).sources;
    expect(sourceIn(jazz, 'kick').surfaces.map(({ name }) => name)).toEqual(['batter', 'resonant']);
  });

  it('heads face away from the shell and stand its depth apart', () => {
    for (const { surfaces, struck, depth } of heardIn(fivePiece).sources) {
      const other = surfaces.find(({ name }) => name === 'resonant');
      if (!other) continue;
      expect(distance(struck.centre, other.centre)).toBeCloseTo(depth, 6);
      expect(dot(struck.normal, other.normal)).toBeCloseTo(-1, 9);
    }
  });

  it('takes the level of the piece before that of its kind', () => {
    const placed = only(buildRig(fivePiece).pieces.find(({ piece }) => piece.id === 'snare'));
    const level = (choices: Partial<typeof DEFAULT_CHOICES>) =>
      sourceOf(placed, { ...DEFAULT_CHOICES, ...choices })?.level;
    expect(level({})).toBe(DEFAULT_CHOICES.levels.snare);
    expect(level({ pieceLevels: { snare: 101 } })).toBe(101);
    expect(level({ pieceLevels: { kick: 101 } })).toBe(DEFAULT_CHOICES.levels.snare);
  });
});
