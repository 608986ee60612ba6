import { listed } from '../../geometry/listed.ts';
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
  const micsOf = rememberedList(boxedMic);
  const piecesOf = rememberedList(boxedPiece);
  const micsAndPieces = rememberedPairs(betweenMicAndPiece, { after: false });
  const micsAndMics = rememberedPairs(betweenMics, { after: true });
  const piecesAndPieces = rememberedPairs(betweenPieces, { after: true });
  const offDeckOf = remembered((deck: Deck) => ({
    mics: rememberedList((placed: PlacedMic) => micOffDeck(placed, deck)),
    pieces: rememberedList((placed: PlacedPiece) => pieceOffDeck(placed, deck)),
  }));
  return (rig, deck) => {
    const mics = micsOf(rig.mics);
    const pieces = piecesOf(rig.pieces);
    const offDeck = offDeckOf(deck);
    return [
      ...rowByRow(offDeck.mics(rig.mics), micsAndPieces(mics, pieces), micsAndMics(mics, mics)),
      ...rowByRow(offDeck.pieces(rig.pieces), piecesAndPieces(pieces, pieces)),
    ];
  };
}

/** What was found of the first thing by each of some measures, then of the second, and so on. */
function rowByRow(...measures: readonly (readonly Found[])[]): readonly Standing[] {
  if (measures.every((rows) => rows.every(({ length }) => length === 0))) return NOTHING;
  const [first = []] = measures;
  return first.flatMap((_, i) => measures.flatMap((rows) => rows[i] ?? NOTHING));
}

/** What is made of each thing of a list, both remembered: the list while nothing in it changes, and each thing in the next list. */
function rememberedList<Thing extends object, Made>(
  make: (thing: Thing) => Made,
): (things: readonly Thing[]) => readonly Made[] {
  const made = remembered(make);
  return remembered((things: readonly Thing[]) => listed(things, made));
}

/**
 * What stands in the way of one mic of a rig, for looking at many places of it: the findings of {@link findStanding} that are about the mic, were it
 * placed so, those with mics first.
 */
export function createStandingOf(
  { pieces, mics }: Rig,
  deck: Deck,
): (placed: PlacedMic) => readonly Standing[] {
  const boxedPieces = listed(pieces, boxedPiece);
  const boxedMics = listed(mics, boxedMic);
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
