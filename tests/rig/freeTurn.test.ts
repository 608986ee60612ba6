import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changePiece } from '../../src/layout/edit/change.ts';
import { addMic, changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { freeTurn, turnedFeet } from '../../src/rig/freeTurn.ts';
import { findStanding } from '../../src/rig/standing/findStanding.ts';
import { kit, micOn } from './kits.ts';

const base: StandMount = {
  kind: 'stand',
  stand: 'tripodTall',
  base: { x: 0, y: 0 },
  turn: 0,
  mast: null,
  tip: { x: 0, y: 300, z: 1800 },
  azimuth: 90,
  pitch: -60,
};

/** An empty, large deck with the mics given on tall tripods. */
function onDeck(...stands: readonly Partial<StandMount>[]): Layout {
  const empty = kit('five-piece-one-rack');
  const bare: Layout = {
    ...empty,
    pieces: [],
    mics: [],
    deck: { ...empty.deck, width: 8000, depth: 8000, kit: { x: 0, y: 0, turn: 0 } },
  };
  return stands.reduce(
    (layout, stand, index) =>
      addMic(layout, { ...micOn({ ...base, ...stand }), id: `mic-${index}` }),
    bare,
  );
}

const overlaps = (layout: Layout, id: string) =>
  findStanding(buildRig(layout), layout.deck).filter(
    ({ code, about }) => code === 'feet-overlap' && about.includes(id),
  );
const turnIn = (layout: Layout, id: string) => freeTurn(layout, buildRig(layout), id);

describe('the smallest turn that frees a tripod (S5)', () => {
  // Legs of 330 mm toward each other, hubs 500 mm apart: at 0 and 180 degrees they lie on one line.
  const facing = onDeck(
    { turn: 0 },
    { base: { x: 500, y: 0 }, tip: { x: 500, y: 300, z: 1800 }, turn: 180 },
  );

  it('turns a leg past the other’s, and frees it', () => {
    expect(overlaps(facing, 'mic-0')).toHaveLength(1);
    const found = turnIn(facing, 'mic-0');
    expect(found).toBeDefined();
    if (!found) return;
    expect(overlaps(turnedFeet(facing, found), 'mic-0')).toEqual([]);
    expect(turnedFeet(facing, found).mics[1]).toBe(facing.mics[1]);
  });

  it('is the smallest in whole degrees: no smaller one either way does it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 119 }),
        fc.integer({ min: 0, max: 119 }),
        fc.integer({ min: 380, max: 640 }),
        (first, second, apart) => {
          const layout = onDeck(
            { turn: first },
            { base: { x: apart, y: 0 }, tip: { x: apart, y: 300, z: 1800 }, turn: second },
          );
          const found = turnIn(layout, 'mic-0');
          const tried = Array.from({ length: 61 }, (_, size) => size).find((size) =>
            [first + size, first - size].some(
              (turn) =>
                overlaps(turnedFeet(layout, { id: 'mic-0', by: 0, turn }), 'mic-0').length === 0,
            ),
          );
          if (tried === 0) expect(Math.abs(found?.by ?? 1)).toBe(1);
          else expect(found && Math.abs(found.by)).toBe(tried);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('none does where the hubs themselves meet', () => {
    const piled = onDeck({}, { base: { x: 20, y: 0 } });
    expect(overlaps(piled, 'mic-0')).toHaveLength(1);
    expect(turnIn(piled, 'mic-0')).toBeUndefined();
  });

  it('none that puts a foot over the deck’s edge', () => {
    // The edge is 296 mm behind the hub: the leg at 240 degrees stands on it, and turned on by 6 it would not.
    const edge: Layout = { ...facing, deck: { ...facing.deck, kit: { x: 0, y: -3704, turn: 0 } } };
    expect(turnIn(facing, 'mic-0')?.by).toBe(6);
    expect(turnIn(edge, 'mic-0')?.by).toBe(-6);
  });

  it('a round base, a clip and a thing that is not there have nothing to turn', () => {
    const layout = changeMount(facing, 'mic-0', (mount) =>
      mount.kind === 'stand' ? { ...mount, stand: 'roundBoom' } : mount,
    );
    expect(turnIn(layout, 'mic-0')).toBeUndefined();
    expect(turnIn(kit('five-piece-one-rack'), 'mic-rack-tom')).toBeUndefined();
    expect(turnIn(facing, 'nobody')).toBeUndefined();
  });

  it('asks the caller for a mic, and takes the next that serves', () => {
    const free = turnIn(facing, 'mic-0');
    const next = freeTurn(facing, buildRig(facing), 'mic-0', ({ mic }) => {
      return mic.mount.kind === 'stand' && mic.mount.turn !== free?.turn;
    });
    expect(Math.abs(next?.by ?? 0)).toBeGreaterThanOrEqual(Math.abs(free?.by ?? 0));
    expect(next?.turn).not.toBe(free?.turn);
  });

  it('frees a cymbal stand that is turned into its neighbour', () => {
    const start = kit('five-piece-two-racks');
    const cymbals = start.pieces.filter(({ kind }) => kind === 'crash' || kind === 'ride');
    let turned = 0;
    for (const { id } of cymbals) {
      for (let by = 0; by < 120; by += 5) {
        const layout = changePiece(start, id, (piece) =>
          'support' in piece && piece.support.kind === 'stand' && piece.kind !== 'hiHat'
            ? { ...piece, support: { ...piece.support, turn: piece.support.turn + by } }
            : piece,
        );
        if (overlaps(layout, id).length === 0) continue;
        const found = turnIn(layout, id);
        expect(found, `${id} at ${by}`).toBeDefined();
        if (found) expect(overlaps(turnedFeet(layout, found), id)).toEqual([]);
        turned += 1;
      }
    }
    expect(turned).toBeGreaterThan(0);
  });
});
