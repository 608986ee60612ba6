import { listed } from '../geometry/listed.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { LEG_RADIUS } from '../rig/feet.ts';
import type { Footprint, PlacedMic, PlacedPiece, Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { boxObstacle } from './box.ts';
import { keepingOf } from './deckFloor.ts';
import { footSpace } from './footSpace.ts';
import { type Keeping, type Obstacle, obstacleRound } from './obstacle.ts';

/** How high a leg's underside must stand over the deck for a cable with its plug to lie under it. Common practice, no source. */
const UNDER_LEG: Mm = 30;

/**
 * What cables keep off, in the deck frame, in the layout's order: pieces, mics, the box when it stands on the deck.
 *
 * O1 A kick, a pedal: their outlines on the plan. Nothing is laid under them.
 * O2 The player's foot space at each pedal (F1).
 * O3 A throne: the hull of its feet. Nothing is laid under the player.
 * O4 Any other stand on legs: the disc of its hub, and of each leg from the foot inward what stands less than 30 mm over the
 *    deck. Cables go under the rest of a raised leg.
 * O5 A round base, a foot of a drum or a kick: its disc. A plate on the deck: the plate.
 * O6 All of these grown by the distance to keep.
 */
export function floorObstacles(layout: Layout, rig: Rig): readonly Obstacle[] {
  const keeping = keepingOf(layout);
  return [
    ...rig.pieces.flatMap((placed) => pieceObstacles(placed, keeping)),
    ...rig.mics.flatMap((placed) => micObstacles(placed, keeping)),
    ...boxObstacle(layout),
  ];
}

/** What one piece keeps cables off. */
export function pieceObstacles(placed: PlacedPiece, keeping: Keeping): Obstacle[] {
  const { piece, outlines, footprints } = placed;
  const owner = piece.id;
  const outlineKind = piece.kind === 'pedal' ? 'pedal' : 'kick';
  const lying = listed(
    outlines,
    (points) => ({ kind: outlineKind, owner, points, radius: 0 }) as const,
  );
  const played =
    piece.kind === 'pedal'
      ? [{ kind: 'footSpace', owner, points: footSpace(piece), radius: 0 } as const]
      : [];
  const shapes = [...lying, ...played].flatMap((shape) => obstacleRound(shape, keeping));
  const feet = footprints.flatMap((footprint) =>
    piece.kind === 'throne'
      ? throneObstacle(footprint, owner, keeping)
      : footprintObstacles(footprint, owner, keeping),
  );
  return [...shapes, ...feet];
}

/** What one mic's own base keeps other cables off; nothing for a mic on a clip or in a kick. */
export function micObstacles({ mic, stand, solids }: PlacedMic, keeping: Keeping): Obstacle[] {
  if (stand) return footprintObstacles(stand.footprint, mic.id, keeping);
  if (mic.mount.kind !== 'plateOnDeck') return [];
  const plate = solids.filter(({ part }) => part === 'plate').map(({ capsule }) => capsule);
  const points = plate.flatMap(({ a, b }) => [a, b]);
  const radius = Math.max(0, ...plate.map((capsule) => capsule.radius));
  return obstacleRound({ kind: 'plate', owner: mic.id, points, radius }, keeping);
}

function throneObstacle(footprint: Footprint, owner: Id, keeping: Keeping): Obstacle[] {
  const points = [footprint.hub, ...footprint.feet];
  return obstacleRound({ kind: 'throne', owner, points, radius: LEG_RADIUS }, keeping);
}

function footprintObstacles(footprint: Footprint, owner: Id, keeping: Keeping): Obstacle[] {
  const { hub, hubRadius, feet, legHeight } = footprint;
  const kind = feet.length > 0 ? 'hub' : 'base';
  const found = obstacleRound({ kind, owner, points: [hub], radius: hubRadius }, keeping);
  const low = lowShare(legHeight);
  for (const foot of feet) {
    const inward = { x: foot.x + low * (hub.x - foot.x), y: foot.y + low * (hub.y - foot.y) };
    const shape = { kind: 'foot', owner, points: [foot, inward], radius: LEG_RADIUS } as const;
    for (const obstacle of obstacleRound(shape, keeping)) found.push(obstacle);
  }
  return found;
}

/** The share of a leg, from its foot, whose underside is too near the deck for a cable: all of a leg that lies flat. */
function lowShare(legHeight: Mm): number {
  const rise = legHeight - LEG_RADIUS;
  return rise <= UNDER_LEG ? 1 : UNDER_LEG / rise;
}
