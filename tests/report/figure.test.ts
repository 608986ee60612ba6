import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/vector.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { bodyOf } from '../../src/player/body.ts';
import { legsOf } from '../../src/player/legs.ts';
import { createFigures, figureOf } from '../../src/report/figure.ts';

const layout = fivePieceOneRack('kit');
const { player, pieces } = layout;
const figure = figureOf(player, pieces);

describe('the figure of the player', () => {
  it('has the lengths of the body that the model uses', () => {
    const body = bodyOf(player);
    const { shoulders } = figure;
    expect(distance(shoulders.a, shoulders.b)).toBeCloseTo(body.biacromialBreadth, 9);
    expect(shoulders.a.z).toBeCloseTo(player.seatHeight + body.acromialHeightSitting, 9);
    for (const [upper, fore] of figure.arms) {
      expect(distance(upper.a, upper.b)).toBeCloseTo(body.acromionRadiale, 9);
      expect(upper.b).toEqual(fore.a);
      const link = body.radialeStylion + body.stylionToGripCentre;
      expect(distance(fore.a, fore.b)).toBeCloseTo(link, 9);
    }
  });

  it('has the legs that count in the clearances', () => {
    expect(figure.legs).toEqual(legsOf(player, pieces));
    expect(figure.legs.length).toBeGreaterThan(1);
  });

  it('is the same on both sides', () => {
    const [left, right] = figure.arms;
    expect(left?.[1].b.x).toBe(-(right?.[1].b.x ?? Number.NaN));
    expect(left?.[1].b.y).toBe(right?.[1].b.y);
  });

  it('is kept while only other things change', () => {
    const figureIn = createFigures();
    const first = figureIn(layout);
    expect(figureIn(movePiece(layout, 'snare', { x: 5, y: 500 }))).toBe(first);
    expect(figureIn({ ...layout, player: { ...player, stature: 1900 } })).not.toBe(first);
    const pedal = pieces.find(({ kind }) => kind === 'pedal');
    if (pedal?.kind !== 'pedal') throw new Error('expected a pedal');
    const moved = movePiece(layout, pedal.id, { x: pedal.x + 10, y: pedal.y });
    expect(figureIn(moved).legs).not.toEqual(first.legs);
  });
});
