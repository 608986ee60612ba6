import { describe, expect, it } from 'vitest';
import { newPiece } from '../../../../src/layout/catalogue/defaults/newPiece.ts';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { micGroups, micSources } from '../../../../src/layout/catalogue/offered/offeredMics.ts';
import {
  areUnderOverheads,
  hearWithOverheads,
  overheadsOf,
  unheardCymbals,
} from '../../../../src/layout/catalogue/offered/overheads.ts';
import { addPiece } from '../../../../src/layout/edit/pieces.ts';
import type { Layout } from '../../../../src/layout/layout.ts';
import { isStruck } from '../../../../src/layout/pieces/piece.ts';

const kits: readonly Layout[] = STARTING_KITS.filter(({ key }) => key !== 'empty-deck').map(
  ({ key, make }) => make(key),
);
const withSplash = (layout: Layout): Layout => addPiece(layout, newPiece('splash', layout));
const five = kits.find(({ id }) => id === 'five-piece-two-racks');
if (!five) throw new Error('no kit of five');

describe('overheads', () => {
  it('are the mics above the cymbals that they hear, whatever their names', () => {
    expect(overheadsOf(five).map(({ mic }) => mic.name)).toEqual([
      'Overhead, hi-hat side',
      'Overhead, floor tom side',
    ]);
    for (const kit of kits) expect(overheadsOf(kit).length, kit.name).toBeGreaterThan(0);
  });

  it('still cover both halves of the cymbals once a splash is added', () => {
    for (const kit of kits) {
      const over = micGroups(withSplash(kit)).filter(({ hears }) => hears.length > 1);
      for (const { name, hears } of over) {
        expect([kit.name, name, areUnderOverheads(withSplash(kit), hears)]).toEqual([
          kit.name,
          name,
          true,
        ]);
      }
    }
  });

  it('hear a new cymbal on request: the nearest, and the other too where it is about as near', () => {
    expect(unheardCymbals(five)).toEqual([]);
    const kit = withSplash(five);
    const [splash] = unheardCymbals(kit);
    if (!splash) throw new Error('the splash is heard by none');
    const heard = hearWithOverheads(kit, splash.id);
    expect(unheardCymbals(heard)).toEqual([]);
    expect(heard.mics).toHaveLength(kit.mics.length);
    expect(heard.mics.some(({ hears }) => hears.at(-1) === splash.id)).toBe(true);
    const at = (x: number) => ({
      ...kit,
      pieces: kit.pieces.map((piece) => (piece.id === splash.id ? { ...piece, x, y: 650 } : piece)),
    });
    const hearing = (layout: Layout) =>
      hearWithOverheads(layout, splash.id)
        .mics.filter(({ hears }) => hears.includes(splash.id))
        .map(({ name }) => name);
    // The overheads hang at x = -350 and x = 420.
    expect(hearing(at(-400))).toEqual(['Overhead, hi-hat side']);
    expect(hearing(at(40))).toEqual(['Overhead, hi-hat side', 'Overhead, floor tom side']);
    expect(hearing(at(500))).toEqual(['Overhead, floor tom side']);
  });

  it('are not asked to hear what hangs above them, nor where there are none', () => {
    const bare = { ...withSplash(five), mics: [] };
    expect(unheardCymbals(bare)).toEqual([]);
    expect(hearWithOverheads(bare, bare.pieces.at(-1)?.id ?? '')).toBe(bare);
    const high = withSplash(five);
    const raised = {
      ...high,
      pieces: high.pieces.map((piece) => (piece.kind === 'splash' ? { ...piece, z: 2200 } : piece)),
    };
    expect(unheardCymbals(raised)).toEqual([]);
  });
});

describe('what another mic can be for', () => {
  it('is every piece that sounds, cymbals too, and the halves of the cymbals', () => {
    for (const kit of kits.map(withSplash)) {
      const sources = micSources(kit);
      const alone = sources.flatMap(({ hears }) => (hears.length === 1 ? hears : []));
      const sounding = kit.pieces.filter((piece) => isStruck(piece) || piece.kind === 'kick');
      expect(alone.toSorted()).toEqual(sounding.map(({ id }) => id).toSorted());
      expect(sources).toEqual(expect.arrayContaining([...micGroups(kit)]));
    }
  });
});
