import { remembered } from '../../geometry/remembered.ts';
import type { Deck } from '../../layout/deck.ts';
import type { PlacedMic, PlacedPiece, Rig } from '../placed.ts';
import { type BoxedMic, type BoxedPiece, boxedMic, boxedPiece } from './boxed.ts';
import { feetOverlap } from './feet.ts';
import { micAgainstMic } from './micAgainstMic.ts';
import { micAgainstPiece } from './micAgainstPiece.ts';
import { micOffDeck, pieceOffDeck } from './offDeck.ts';
import { type Found, NOTHING, near, rememberedPairs } from './pairs.ts';
import { pieceInPiece } from './pieceInPiece.ts';
import type { Standing } from './standing.ts';

/** Everything of a rig that stands in the way of something else or off the deck, in the order of the layout. */
export const findStanding = (rig: Rig, deck: Deck): readonly Standing[] =>
  createStandingFinder()(rig, deck);

/**
 * A finder that remembers what it measured: a pair of placed things (or one and its deck) that are the same objects, in the
 * same places of their lists, as the last time is not measured again. What it returns is always equal to what {@link findStanding} gives.
 */
export function createStandingFinder(): (rig: Rig, deck: Deck) => readonly Standing[] {
  const micOf = remembered(boxedMic);
  const pieceOf = remembered(boxedPiece);
  const micsAndPieces = rememberedPairs(betweenMicAndPiece, { after: false });
  const micsAndMics = rememberedPairs(betweenMics, { after: true });
  const piecesAndPieces = rememberedPairs(betweenPieces, { after: true });
  const offDeckOf = remembered((deck: Deck) => ({
    mic: remembered((placed: PlacedMic) => micOffDeck(placed, deck)),
    piece: remembered((placed: PlacedPiece) => pieceOffDeck(placed, deck)),
  }));
  return (rig, deck) => {
    const mics = rig.mics.map(micOf);
    const pieces = rig.pieces.map(pieceOf);
    const offDeck = offDeckOf(deck);
    const withPieces = micsAndPieces(mics, pieces);
    const withMics = micsAndMics(mics, mics);
    const amongPieces = piecesAndPieces(pieces, pieces);
    return [
      ...rig.mics.flatMap((mic, i) => [
        ...offDeck.mic(mic),
        ...(withPieces[i] ?? NOTHING),
        ...(withMics[i] ?? NOTHING),
      ]),
      ...rig.pieces.flatMap((piece, i) => [
        ...offDeck.piece(piece),
        ...(amongPieces[i] ?? NOTHING),
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
        if (i === own) return NOTHING;
        // In the order of the layout, as the finder measures them.
        return i < own ? near(other, boxed, betweenMics) : near(boxed, other, betweenMics);
      }),
      ...boxedPieces.flatMap((piece) => near(boxed, piece, betweenMicAndPiece)),
    ];
  };
}

function betweenMics(first: BoxedMic, second: BoxedMic): Found {
  const feet = feetOverlap(first.onDeck, second.onDeck);
  return withFeet(feet, micAgainstMic(first, second, feet !== undefined));
}

function betweenMicAndPiece(mic: BoxedMic, piece: BoxedPiece): Found {
  const feet = feetOverlap(mic.onDeck, piece.onDeck);
  return withFeet(feet, micAgainstPiece(mic, piece, feet !== undefined));
}

const betweenPieces = (first: BoxedPiece, second: BoxedPiece): Found =>
  withFeet(feetOverlap(first.onDeck, second.onDeck), pieceInPiece(first, second));

/** Feet that overlap on the plan are told once, though a foot may also be found in a shell. */
function withFeet(feet: Standing | undefined, found: Found): Found {
  return feet ? [feet, ...found.filter(({ code }) => code !== 'feet-overlap')] : found;
}
