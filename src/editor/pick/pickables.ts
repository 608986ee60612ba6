import { remembered } from '../../geometry/remembered.ts';
import type { Vec2 } from '../../geometry/vector.ts';
import type { Box } from '../../layout/cabling.ts';
import type { Deck } from '../../layout/deck.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import type { Report, RunRow } from '../../report/report.ts';
import { boxCorners } from '../../rig/boxShape.ts';
import { deckOutline, toKit } from '../../rig/deckFrame.ts';
import type { PlacedMic, PlacedPiece } from '../../rig/placed.ts';
import { surfaceOf } from '../../rig/surface.ts';
import { type Selection, sameSelection } from '../../session/selection.ts';
import type { Outline } from './outline.ts';

/**
 * How a thing answers a finger: `fine` things are small and win over what they stand on, within a finger's width; `broad`
 * ones are met where they are seen; `line`s only close by, and `ground` when nothing else is there.
 */
export type Fineness = 'fine' | 'line' | 'broad' | 'ground';

/**
 * The part of a thing that was met: a stand mic is dragged by its tip, its base or (boom and mast) as a whole; its cable selects
 * it but is not dragged.
 */
export type Grip = 'whole' | 'tip' | 'base' | 'cable';

export interface Pickable {
  readonly selection: Selection;
  readonly grip: Grip;
  readonly fineness: Fineness;
  /** Height of its top, mm: of broad things the highest is met first. */
  readonly height: number;
  /** On the plan it is drawn below the kit: a drum or cymbal over it hides it. */
  readonly isOnFloor?: true;
  readonly outline: Outline;
}

const disc = (centre: Vec2, radius: number): Outline => ({
  kind: 'line',
  a: centre,
  b: centre,
  radius,
});

export function pickablesOfPiece(placed: PlacedPiece): readonly Pickable[] {
  const { piece } = placed;
  const selection: Selection = { kind: 'piece', id: piece.id };
  const part = (outline: Outline, height: number, fineness: Fineness = 'broad'): Pickable => ({
    selection,
    grip: 'whole',
    fineness,
    height,
    outline,
  });
  const hubs = placed.footprints
    .filter((foot) => foot.feet.length > 0)
    .map((foot) => part(disc(foot.hub, 40), 0, 'ground'));
  if (isStruck(piece)) {
    return [part({ kind: 'disc', disc: surfaceOf(piece) }, piece.z), ...hubs];
  }
  if (piece.kind === 'throne') return [part(disc({ x: 0, y: 0 }, piece.diameter / 2), 0), ...hubs];
  const height = piece.kind === 'kick' ? piece.z : 1;
  return placed.outlines.map((ring) => part({ kind: 'area', ring }, height));
}

export function pickablesOfMic(placed: PlacedMic): readonly Pickable[] {
  const selection: Selection = { kind: 'mic', id: placed.mic.id };
  const height = placed.tip.z;
  const solids = placed.solids.map(({ part, capsule }): Pickable => {
    const isMic = part === 'body' || part === 'plate';
    return {
      selection,
      grip: isMic ? 'tip' : part === 'base' ? 'base' : 'whole',
      fineness: isMic ? 'fine' : 'line',
      height,
      ...(part === 'base' && { isOnFloor: true }),
      outline: { kind: 'line', a: capsule.a, b: capsule.b, radius: capsule.radius },
    };
  });
  if (!placed.stand) return solids;
  const { hub, hubRadius } = placed.stand.footprint;
  const base: Pickable = {
    selection,
    grip: 'base',
    fineness: 'fine',
    height: 0,
    isOnFloor: true,
    outline: disc(hub, hubRadius),
  };
  return [...solids, base];
}

/** A cable answers for its mic. */
export const pickablesOfRun = (run: RunRow, deck: Deck): readonly Pickable[] =>
  run.route.slice(1).map((to, i): Pickable => {
    const from = run.route[i] ?? to;
    return {
      selection: { kind: 'mic', id: run.mic },
      grip: 'cable',
      fineness: 'line',
      height: 0,
      isOnFloor: true,
      outline: { kind: 'line', a: toKit(deck, from), b: toKit(deck, to), radius: 3 },
    };
  });

const pickableOfBox = (box: Box, deck: Deck): Pickable => ({
  selection: { kind: 'box' },
  grip: 'whole',
  fineness: 'broad',
  height: 70,
  outline: { kind: 'area', ring: boxCorners(box).map((corner) => toKit(deck, corner)) },
});

/** The player answers behind the throne, between the shoulders. */
const pickableOfPlayer: Pickable = {
  selection: { kind: 'player' },
  grip: 'whole',
  fineness: 'ground',
  height: 0,
  outline: { kind: 'line', a: { x: -230, y: 0 }, b: { x: 230, y: 0 }, radius: 65 },
};

/** The deck answers at its edge: a finger on its empty middle means nothing. */
const pickablesOfDeck = (deck: Deck): readonly Pickable[] => {
  const corners = deckOutline(deck).map((corner) => toKit(deck, corner));
  return corners.map((a, i) => ({
    selection: { kind: 'deck' },
    grip: 'whole',
    fineness: 'ground',
    height: 0,
    outline: { kind: 'line', a, b: corners[(i + 1) % corners.length] ?? a, radius: 0 },
  }));
};

/** In a drag most things are the same objects in every frame. */
const ofMic = remembered(pickablesOfMic);
const ofPiece = remembered(pickablesOfPiece);
const runsOn = remembered((deck: Deck) => remembered((run: RunRow) => pickablesOfRun(run, deck)));

/** Everything on the plan that a finger can mean. */
export const pickablesOf = (
  layout: Layout,
  { rig, runs }: { readonly rig: Pick<Report['rig'], 'mics' | 'pieces'> } & Pick<Report, 'runs'>,
  showRuns: boolean,
): readonly Pickable[] => [
  ...rig.mics.flatMap(ofMic),
  ...rig.pieces.flatMap(ofPiece),
  pickableOfBox(layout.box, layout.deck),
  ...(showRuns ? runs.flatMap(runsOn(layout.deck)) : []),
  pickableOfPlayer,
  ...pickablesOfDeck(layout.deck),
];

/** The outlines of what is selected, for its highlight. */
export const outlinesOf = (
  pickables: readonly Pickable[],
  selection: Selection | null,
): readonly Outline[] =>
  pickables
    .filter(
      ({ selection: own, grip, fineness }) =>
        sameSelection(own, selection) &&
        grip !== 'cable' &&
        (fineness !== 'ground' || own.kind === 'deck' || own.kind === 'player'),
    )
    .map(({ outline }) => outline);

/** The outlines of what is selected on the plan, found without going through everything else in every frame of a drag. */
export function selectedOutlines(
  layout: Layout,
  { mics, pieces }: Report['rig'],
  selection: Selection | null,
): readonly Outline[] {
  const isIt = (id: string): boolean =>
    selection !== null && 'id' in selection && selection.id === id;
  const rig = {
    mics: mics.filter(({ mic }) => isIt(mic.id)),
    pieces: pieces.filter(({ piece }) => isIt(piece.id)),
  };
  return outlinesOf(pickablesOf(layout, { rig, runs: [] }, false), selection);
}
