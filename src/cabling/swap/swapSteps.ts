import { boundsMeet } from '../../geometry/bounds.ts';
import type { Vec3 } from '../../geometry/vector.ts';
import type { Id } from '../../layout/fields.ts';
import type { Mount } from '../../layout/mics/mount.ts';
import { isDrum } from '../../layout/pieces/piece.ts';
import { carrierOf } from '../../layout/references.ts';
import { carriers } from '../../rig/mics/wayDown.ts';
import type { MicPart, PlacedMic, PlacedPiece, Rig } from '../../rig/placed.ts';
import { boxedPiece } from '../../rig/standing/boxed.ts';
import type { Mm } from '../../units/quantity.ts';
import {
  capsuleInTheWay,
  deepest,
  type InTheWay,
  type LiftedDrum,
  liftedDrum,
  solidInTheWay,
} from './liftedDrum.ts';

/**
 * What has to be undone:
 * - `unplug`: the cable of a mic that comes off with the drum, or with what it carries;
 * - `unclip`: a mic on a rim clip, off with its clip;
 * - `swingBoom`: a boom with its mic turned away on its stand; `moveStand`: the whole stand;
 * - `movePlate`: a plate;
 * - `takeOff`: a piece that the drum carries; `moveAside`: a piece in the way;
 * - `release`: what holds the drum itself, its stand or another piece.
 */
export type SwapWhat =
  | 'unplug'
  | 'unclip'
  | 'swingBoom'
  | 'moveStand'
  | 'movePlate'
  | 'takeOff'
  | 'moveAside'
  | 'release';

/** One thing to undo. */
export interface SwapStep {
  readonly what: SwapWhat;
  /** The mic or piece that hands are laid on. */
  readonly about: Id;
  /** Where, kit frame. */
  readonly place: Vec3;
}

/** What lifting a drum out takes. */
export interface Swap {
  readonly drum: Id;
  readonly rise: Mm;
  /** In the order in which they are best done: cables first, the drum's own hold last. */
  readonly steps: readonly SwapStep[];
}

const ORDER: readonly SwapWhat[] = [
  'unplug',
  'unclip',
  'swingBoom',
  'moveStand',
  'movePlate',
  'takeOff',
  'moveAside',
  'release',
];

/**
 * What is to be undone before a drum is lifted out by its own height (X1, X2); null for what is no drum of the rig.
 *
 * X3 A mic on a clip of the drum is unplugged, where it is plugged, and comes off with its clip. What the drum carries comes off it
 *    first; mics on clips of that are unplugged and go with it.
 * X4 Any other mic with a solid in the way is one step: on a clip it comes off, a plate is moved, on a stand the boom is turned
 *    away, or the stand is moved where mast or feet stand in the way.
 * X5 Any other piece with a shell, cymbal, hoop, mast or leg in the way is moved aside, with what it carries and the mics on its clips: those are not told
 *    again. What carries the drum is not in its way.
 * X6 A drum on a stand or held by another piece is released; one on legs of its own stands free.
 */
export function swapOf(rig: Rig, drum: Id): Swap | null {
  const lift = liftOf(rig, drum);
  if (!lift) return null;
  const steps = [
    ...rig.mics.flatMap((mic) => micSteps(mic, lift)),
    ...lift.pieces,
    ...releaseSteps(lift.placed),
  ];
  return {
    drum,
    rise: lift.lifted.rise,
    steps: steps.toSorted((a, b) => ORDER.indexOf(a.what) - ORDER.indexOf(b.what)),
  };
}

/** What is to be undone of one mic, wherever it is put, with everything else of the rig as it is: for looking at many places of one. */
export function micStepsIn(rig: Rig, drum: Id): (mic: PlacedMic) => readonly SwapStep[] {
  const lift = liftOf(rig, drum);
  return (mic) => (lift ? micSteps(mic, lift) : []);
}

function liftOf(rig: Rig, drum: Id): Lift | null {
  const placed = rig.pieces.find(({ piece }) => piece.id === drum);
  if (!placed || !isDrum(placed.piece)) return null;
  const lifted = liftedDrum(placed, placed.piece);
  if (!lifted) return null;
  const chains = chainsOf(rig);
  return { placed, drum, lifted, chains, pieces: pieceSteps(rig, { drum, lifted, chains }) };
}

interface Way {
  readonly drum: Id;
  readonly lifted: LiftedDrum;
  /** Every piece with what carries it, itself first, to the one that stands on the deck. */
  readonly chains: ReadonlyMap<Id, readonly Id[]>;
}

interface Lift extends Way {
  readonly placed: PlacedPiece;
  readonly pieces: readonly SwapStep[];
}

function chainsOf(rig: Rig): Way['chains'] {
  const pieces = rig.pieces.map(({ piece }) => piece);
  return new Map(
    pieces.map((piece) => [piece.id, carriers(piece, { pieces }).map(({ id }) => id)]),
  );
}

function pieceSteps(rig: Rig, { drum, lifted, chains }: Way): readonly SwapStep[] {
  const chainOf = (id: Id): readonly Id[] => chains.get(id) ?? [];
  const others = rig.pieces.filter(({ piece }) => !chainOf(drum).includes(piece.id));
  const takenOff = others.filter(({ piece }) => carrierOf(piece) === drum);
  const inTheWay = new Map(
    others.flatMap((placed) => {
      if (chainOf(placed.piece.id).includes(drum)) return [];
      const found = pieceInTheWay(placed, lifted);
      return found ? [[placed.piece.id, found] as const] : [];
    }),
  );
  const aside = [...inTheWay].filter(
    ([id]) => !chainOf(id).some((by) => by !== id && inTheWay.has(by)),
  );
  return [
    ...takenOff.map((placed) => step('takeOff', placed.piece.id, middleOf(placed))),
    ...aside.map(([id, { at }]) => step('moveAside', id, at)),
  ];
}

function pieceInTheWay(placed: PlacedPiece, lifted: LiftedDrum): InTheWay | undefined {
  const { bodies, hardware, bounds } = boxedPiece(placed);
  if (!boundsMeet(bounds, lifted.bounds)) return undefined;
  return deepest([
    ...bodies
      .filter((body) => boundsMeet(body.bounds, lifted.bounds))
      .flatMap(({ solid }) => solidInTheWay(lifted, solid) ?? []),
    ...hardware.flatMap(({ solid }) => capsuleInTheWay(lifted, solid) ?? []),
  ]);
}

function micSteps(
  { mic, tip, solids }: PlacedMic,
  { drum, lifted, chains, pieces }: Lift,
): readonly SwapStep[] {
  const { mount, id, input } = mic;
  const unplug = input === null ? [] : [step('unplug', id, tip)];
  if (mount.kind === 'clip') {
    if (mount.drum === drum) return [...unplug, step('unclip', id, tip)];
    const chain = chains.get(mount.drum) ?? [];
    if (chain.includes(drum)) return unplug;
    if (pieces.some(({ about }) => chain.includes(about))) return [];
  }
  const met = solids.flatMap(({ part, capsule }) => {
    const found = capsuleInTheWay(lifted, capsule);
    return found ? [{ part, ...found }] : [];
  });
  const worst = deepest(met);
  return worst ? [step(undoing(mount, met), id, worst.at)] : [];
}

const isRooted = (part: MicPart): boolean => part === 'mast' || part === 'base';

function undoing(mount: Mount, met: readonly { readonly part: MicPart }[]): SwapWhat {
  switch (mount.kind) {
    case 'clip':
      return 'unclip';
    case 'stand':
      return met.some(({ part }) => isRooted(part)) ? 'moveStand' : 'swingBoom';
    case 'plateInKick':
    case 'plateOnDeck':
      return 'movePlate';
  }
}

function releaseSteps(placed: PlacedPiece): readonly SwapStep[] {
  const { piece } = placed;
  if (!isDrum(piece) || piece.support.kind === 'legs') return [];
  const { support } = piece;
  return [step('release', support.kind === 'held' ? support.by : piece.id, middleOf(placed))];
}

const middleOf = ({ piece, shells: [shell] }: PlacedPiece): Vec3 =>
  shell?.centre ?? ('z' in piece ? piece : { x: 0, y: 0, z: 0 });

const step = (what: SwapWhat, about: Id, place: Vec3): SwapStep => ({ what, about, place });
