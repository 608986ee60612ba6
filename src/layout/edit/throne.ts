import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import { planCoordinate } from '../fields.ts';
import type { Layout } from '../layout.ts';
import type { Mic } from '../mics/mic.ts';
import type { Piece } from '../pieces/piece.ts';
import { mapShared, withPart } from './change.ts';
import { tidy, tidySpot } from './tidy.ts';

/**
 * Moves the throne to a spot of the kit frame. The kit frame stands on the throne, so it moves along, and everything else
 * is given the coordinates that leave it where it stands on the deck. Without effect where that would put anything beyond
 * the limits of the plan.
 */
export function moveThrone(layout: Layout, to: { readonly x: Mm; readonly y: Mm }): Layout {
  const d = tidySpot(to.x, to.y);
  if (d.x === 0 && d.y === 0) return layout;
  const { kit } = layout.deck;
  const origin = {
    x: tidy(kit.x + d.x * cosDeg(kit.turn) - d.y * sinDeg(kit.turn)),
    y: tidy(kit.y + d.x * sinDeg(kit.turn) + d.y * cosDeg(kit.turn)),
  };
  const pieces = mapShared(layout.pieces, (piece) => shiftedPiece(piece, d));
  const mics = mapShared(layout.mics, (mic) => shiftedMic(mic, d));
  const spots = [origin, ...pieces.filter((piece) => 'x' in piece), ...mics.flatMap(micSpots)];
  if (!spots.every(({ x, y }) => onPlan(x) && onPlan(y))) return layout;
  return withPart({ ...layout, pieces, mics }, 'deck', {
    ...layout.deck,
    kit: { ...kit, ...origin },
  });
}

const onPlan = (coordinate: Mm): boolean => planCoordinate.safeParse(coordinate).success;

type Shift = { readonly x: Mm; readonly y: Mm };

const shifted = <S extends Shift>(spot: S, d: Shift): S => ({
  ...spot,
  ...tidySpot(spot.x - d.x, spot.y - d.y),
});

const shiftedPiece = (piece: Piece, d: Shift): Piece =>
  piece.kind === 'throne' ? piece : shifted(piece, d);

function shiftedMic(mic: Mic, d: Shift): Mic {
  const { mount } = mic;
  switch (mount.kind) {
    case 'stand':
      return {
        ...mic,
        mount: { ...mount, base: shifted(mount.base, d), tip: shifted(mount.tip, d) },
      };
    case 'plateOnDeck':
      return { ...mic, mount: shifted(mount, d) };
    default:
      return mic;
  }
}

function micSpots({ mount }: Mic): readonly Shift[] {
  if (mount.kind === 'stand') return [mount.base, mount.tip];
  return mount.kind === 'plateOnDeck' ? [mount] : [];
}
