import type { Vec2 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import { toDeck } from '../../rig/deckFrame.ts';
import { planPoint } from '../../rig/feet.ts';
import { kickFrame } from '../../rig/pieces/kickFrame.ts';
import { type Measures, measuresOf } from './measures.ts';

/**
 * Which point of a thing is measured: the middle of a stand, of a surface (plumb under it), of a kick's heads, where a pedal's heel
 * and toe are, the middle of a box, the front of a mic (plumb under it), the middle of a plate's front edge.
 */
export type SpotPoint =
  | 'stand'
  | 'middle'
  | 'frontHead'
  | 'batterHead'
  | 'heel'
  | 'toe'
  | 'micFront'
  | 'frontEdge';

/** One point to mark on the deck, with its measures. */
export interface Spot {
  readonly point: SpotPoint;
  readonly at: Vec2<'deck'>;
  readonly measures: Measures;
}

/** Nearer than this a surface is over the middle of its stand, mm: no hand marks two spots there. */
const SAME_SPOT = 5;

type Place = Pick<Layout, 'deck' | 'pieces'>;

/** The points by which a piece is set down, the first to mark first. */
export function spotsOfPiece(piece: Piece, layout: Place): readonly Spot[] {
  const at = (point: SpotPoint, { x, y }: Vec2): Spot => spotAt(point, { x, y }, layout);
  switch (piece.kind) {
    case 'throne':
      return [at('middle', { x: 0, y: 0 })];
    case 'pedal':
      return [at('heel', piece), at('toe', planPoint(piece, piece.turn, piece.length))];
    case 'kick': {
      const { frontHead, backHead } = kickFrame(piece);
      return [at('frontHead', frontHead), at('batterHead', backHead)];
    }
    default: {
      const { support } = piece;
      if (support.kind !== 'stand') return [at('middle', piece)];
      const stand = at('stand', { x: piece.x + support.dx, y: piece.y + support.dy });
      const isOver = Math.hypot(support.dx, support.dy) < SAME_SPOT;
      return isOver ? [stand] : [stand, at('middle', piece)];
    }
  }
}

/**
 * The points by which a mic's mount is set down, none for what is clipped on or lies in a kick.
 *
 * T3 What is measured and set fixes where a mic on a stand is: its base alone would leave it a whole circle round the mast.
 */
export function spotsOfMic({ mount }: Mic, layout: Place): readonly Spot[] {
  switch (mount.kind) {
    case 'stand':
      return [spotAt('stand', mount.base, layout), spotAt('micFront', mount.tip, layout)];
    case 'plateOnDeck':
      return [spotAt('frontEdge', mount, layout)];
    default:
      return [];
  }
}

/** The middle of the box. */
export const spotOfBox = (layout: Pick<Layout, 'box' | 'deck' | 'pieces'>): Spot => {
  const at = { x: layout.box.x, y: layout.box.y };
  return { point: 'middle', at, measures: measuresOf(layout, at) };
};

function spotAt(point: SpotPoint, kitPoint: Vec2, layout: Place): Spot {
  const at = toDeck(layout.deck, { x: kitPoint.x, y: kitPoint.y });
  return { point, at, measures: measuresOf(layout, at) };
}
