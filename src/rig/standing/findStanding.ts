import { type Bounds, boundsMeet } from '../../geometry/bounds.ts';
import { remembered } from '../../geometry/remembered.ts';
import type { Deck } from '../../layout/deck.ts';
import type { PlacedMic, Rig } from '../placed.ts';
import { type BoxedMic, type BoxedPiece, boxedMic, boxedPiece } from './boxed.ts';
import { feetOverlap, micOnDeck, pieceOnDeck } from './feet.ts';
import { micAgainstMic } from './micAgainstMic.ts';
import { micAgainstPiece } from './micAgainstPiece.ts';
import { micOffDeck, pieceOffDeck } from './offDeck.ts';
import { pieceInPiece } from './pieceInPiece.ts';
import type { Standing } from './standing.ts';

/** Everything of a rig that stands in the way of something else or off the deck, in the order of the layout. */
export const findStanding = (rig: Rig, deck: Deck): readonly Standing[] =>
  createStandingFinder()(rig, deck);

/**
 * A finder that remembers what it measured: a pair of placed things (or one and its deck) that are the same objects as
 * before is not measured again. What it returns is always equal to what {@link findStanding} gives.
 */
export function createStandingFinder(): (rig: Rig, deck: Deck) => readonly Standing[] {
  const mics = remembered(boxedMic);
  const pieces = remembered(boxedPiece);
  const ofMics = rememberedPair(betweenMics);
  const ofMicAndPiece = rememberedPair(betweenMicAndPiece);
  const ofPieces = rememberedPair(betweenPieces);
  const ofMicAndDeck = rememberedPair(micOffDeck);
  const ofPieceAndDeck = rememberedPair(pieceOffDeck);
  return (rig, deck) => {
    const boxedMics = rig.mics.map(mics);
    const boxedPieces = rig.pieces.map(pieces);
    return [
      ...boxedMics.flatMap((mic, i) => [
        ...ofMicAndDeck(mic.placed, deck),
        ...boxedPieces.flatMap((piece) => near(mic, piece, ofMicAndPiece)),
        ...boxedMics.slice(i + 1).flatMap((other) => near(mic, other, ofMics)),
      ]),
      ...boxedPieces.flatMap((piece, i) => [
        ...ofPieceAndDeck(piece.placed, deck),
        ...boxedPieces.slice(i + 1).flatMap((other) => near(piece, other, ofPieces)),
      ]),
    ];
  };
}

/**
 * What stands in the way of one mic of a rig, for looking at many places of it: the findings of {@link findStanding} that are about the mic, were it
 * placed so, those with mics first.
 */
export function createStandingOf(
  { pieces, mics }: Rig,
  deck: Deck,
): (placed: PlacedMic) => readonly Standing[] {
  const boxedPieces = pieces.map(boxedPiece);
  const boxedMics = mics.map(boxedMic);
  return (placed) => {
    const boxed = boxedMic(placed);
    const own = mics.findIndex(({ mic }) => mic.id === placed.mic.id);
    return [
      ...micOffDeck(placed, deck),
      ...boxedMics.flatMap((other, i) => {
        if (i === own) return nothing;
        // In the order of the layout, as the finder measures them.
        return i < own ? near(other, boxed, betweenMics) : near(boxed, other, betweenMics);
      }),
      ...boxedPieces.flatMap((piece) => near(boxed, piece, betweenMicAndPiece)),
    ];
  };
}

const nothing: readonly Standing[] = [];

interface Placed {
  readonly bounds: Bounds;
}

/** Measures only what comes near. */
const near = <P extends Placed, Q extends Placed>(
  p: P,
  q: Q,
  measure: (p: P, q: Q) => readonly Standing[],
): readonly Standing[] => (boundsMeet(p.bounds, q.bounds) ? measure(p, q) : nothing);

function betweenMics(first: BoxedMic, second: BoxedMic): readonly Standing[] {
  const feet = feetOverlap(micOnDeck(first.placed), micOnDeck(second.placed));
  return withFeet(feet, micAgainstMic(first, second, feet !== undefined));
}

function betweenMicAndPiece(mic: BoxedMic, piece: BoxedPiece): readonly Standing[] {
  const feet = feetOverlap(micOnDeck(mic.placed), pieceOnDeck(piece.placed));
  return withFeet(feet, micAgainstPiece(mic, piece, feet !== undefined));
}

const betweenPieces = (first: BoxedPiece, second: BoxedPiece): readonly Standing[] =>
  withFeet(
    feetOverlap(pieceOnDeck(first.placed), pieceOnDeck(second.placed)),
    pieceInPiece(first, second),
  );

/** Feet that overlap on the plan are told once, though a foot may also be found in a shell. */
function withFeet(feet: Standing | undefined, found: readonly Standing[]): readonly Standing[] {
  return feet ? [feet, ...found.filter(({ code }) => code !== 'feet-overlap')] : found;
}

function rememberedPair<P extends object, Q extends object, Value>(
  make: (p: P, q: Q) => Value,
): (p: P, q: Q) => Value {
  const rows = remembered((p: P) => remembered((q: Q) => make(p, q)));
  return (p, q) => rows(p)(q);
}
