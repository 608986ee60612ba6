import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import { carrierOf } from '../../layout/references.ts';
import { micKey, pieceKey, runKey } from '../../layout/setUpKeys.ts';

/** Parts of the work, in their order. */
export const STAGES = [
  'marks',
  'kick',
  'drums',
  'cymbals',
  'stands',
  'clips',
  'cables',
  'check',
] as const;
export type Stage = (typeof STAGES)[number];

/**
 * One thing to do. `key` names it for ever: a tick belongs to it however the list changes.
 *
 * P1 The marks come first (rug down, deck, throne), then the kick with the pedals, drums, cymbals and percussion, mic stands, mics on clips and plates,
 *    box and cables, and last the walk round.
 * P2 What is held by another piece comes after it, even where its kind would come before.
 */
export interface SetUpStep {
  readonly key: string;
  readonly stage: Stage;
  readonly subject:
    | { readonly kind: 'deck' | 'box' | 'check' }
    | { readonly kind: 'piece'; readonly piece: Piece }
    | { readonly kind: 'mic'; readonly mic: Mic }
    | { readonly kind: 'run'; readonly mic: Mic };
}

/** Every step that sets the layout up, in order. */
export function setUpSteps(
  layout: Pick<Layout, 'pieces' | 'mics'>,
  runs: readonly { readonly mic: Id; readonly input: number | null }[],
): readonly SetUpStep[] {
  const mics = layout.mics;
  const onStands = mics.filter(({ mount }) => mount.kind === 'stand');
  const others = mics.filter(({ mount }) => mount.kind !== 'stand');
  return [
    { key: 'deck', stage: 'marks', subject: { kind: 'deck' } },
    ...piecesInOrder(layout.pieces).map(pieceStep),
    ...onStands.map((mic) => micStep(mic, 'stands')),
    ...others.map((mic) => micStep(mic, 'clips')),
    { key: 'box', stage: 'cables', subject: { kind: 'box' } },
    ...runsByInput(runs, mics),
    { key: 'check', stage: 'check', subject: { kind: 'check' } },
  ];
}

const ranks: Readonly<Record<Piece['kind'], number>> = {
  throne: 0,
  kick: 1,
  pedal: 2,
  snare: 3,
  floorTom: 4,
  rackTom: 5,
  hiHat: 6,
  ride: 7,
  crash: 8,
  china: 9,
  splash: 10,
  percussion: 11,
};

/** Pieces in the order in which they are set down (P1, P2). */
export function piecesInOrder(pieces: readonly Piece[]): readonly Piece[] {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const placed = new Set<Piece>();
  const place = (piece: Piece, above: readonly Piece[]): void => {
    if (placed.has(piece) || above.includes(piece)) return;
    const carrier = byId.get(carrierOf(piece) ?? '');
    if (carrier) place(carrier, [...above, piece]);
    placed.add(piece);
  };
  for (const piece of pieces.toSorted((a, b) => ranks[a.kind] - ranks[b.kind])) place(piece, []);
  return [...placed];
}

function pieceStep(piece: Piece): SetUpStep {
  return {
    key: pieceKey(piece.id),
    stage: stageOf(piece.kind),
    subject: { kind: 'piece', piece },
  };
}

function stageOf(kind: Piece['kind']): Stage {
  switch (kind) {
    case 'throne':
      return 'marks';
    case 'kick':
    case 'pedal':
      return 'kick';
    case 'snare':
    case 'rackTom':
    case 'floorTom':
      return 'drums';
    default:
      return 'cymbals';
  }
}

const micStep = (mic: Mic, stage: Stage): SetUpStep => ({
  key: micKey(mic.id),
  stage,
  subject: { kind: 'mic', mic },
});

function runsByInput(
  runs: readonly { readonly mic: Id; readonly input: number | null }[],
  mics: readonly Mic[],
): readonly SetUpStep[] {
  const last = Number.MAX_SAFE_INTEGER;
  return runs
    .toSorted((a, b) => (a.input ?? last) - (b.input ?? last))
    .flatMap(({ mic: id }): SetUpStep[] => {
      const mic = mics.find((each) => each.id === id);
      return mic ? [{ key: runKey(id), stage: 'cables', subject: { kind: 'run', mic } }] : [];
    });
}
