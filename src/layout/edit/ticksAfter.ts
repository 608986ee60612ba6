import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Deck } from '../deck.ts';
import { differences } from '../differences.ts';
import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';
import type { Mic } from '../mics/mic.ts';
import type { Piece } from '../pieces/piece.ts';
import { micKey, pieceKey, runKey } from '../setUpKeys.ts';
import { signedMic, signedPiece } from '../signed.ts';
import { withPart } from './change.ts';
import { moveThrone } from './throne.ts';

/**
 * The layout after a change, without the ticks that are no longer true; the same layout when all of them still are. A tick says that a thing
 * stands as the plan has it, so that it comes off when what is set by hand is no longer the same:
 * - of a piece all but its name and which hands play it, of the throne the seat's height too;
 * - of a mic all but its name, its input and what it hears. A clip that stays where it is on its drum keeps its tick when the drum moves;
 * - of a cable its mic, its input or the box;
 * - of the deck its size, the kit's place or the stairs. With another size or place everything stands otherwise from the edges. Of a throne that is moved
 *   by itself only its own: all else stays where it stands on the deck, though the kit's frame goes along with the throne;
 * - of the walk round any of these, ticked or not.
 */
export function ticksAfter(before: Layout, after: Layout): Layout {
  const { done } = after.setUp;
  if (before === after || done.length === 0) return after;
  const untrue = keysSetOtherwise(before, after);
  const kept = done.filter((key) => !untrue.has(key));
  return kept.length === done.length ? after : withPart(after, 'setUp', { done: kept });
}

/** Keys of what is set otherwise, has come or has gone. */
function keysSetOtherwise(before: Layout, after: Layout): ReadonlySet<string> {
  if (!isThroneAlone(before, after)) return keysChanged(before, after);
  const thrones = after.pieces.filter(({ kind }) => kind === 'throne');
  return new Set([...thrones.map(({ id }) => pieceKey(id)), 'check']);
}

/** Less than this is the noise of turning a frame to and fro, mm and degrees. */
const NOISE = 0.001;

/** Whether the throne was moved and nothing else: with the kit's frame put back to where it was, all is as it was. */
function isThroneAlone(before: Layout, after: Layout): boolean {
  const [was, is] = [before.deck.kit, after.deck.kit];
  if (was.turn !== is.turn || !isOther(was, is)) return false;
  const [x, y, cos, sin] = [was.x - is.x, was.y - is.y, cosDeg(is.turn), sinDeg(is.turn)];
  const back = moveThrone(after, { x: cos * x + sin * y, y: cos * y - sin * x });
  return differences({ ...before, setUp: null }, { ...back, setUp: null }).every(
    ({ before: p, after: q }) =>
      typeof p === 'number' && typeof q === 'number' && Math.abs(p - q) < NOISE,
  );
}

function keysChanged(before: Layout, after: Layout): ReadonlySet<string> {
  const isResized = isOther(sizeOf(before.deck), sizeOf(after.deck));
  const isShifted = isResized || isOther(before.deck.kit, after.deck.kit);
  const isBoxOther = isResized || isOther(before.box, after.box);
  const pieces = idsOf(before.pieces, after.pieces).filter(
    (id) => isShifted || isOther(setPiece(before, id), setPiece(after, id)),
  );
  const allMics = idsOf(before.mics, after.mics);
  const mics = allMics.filter((id) => isShifted || isOther(setMic(before, id), setMic(after, id)));
  const runs = allMics.filter(
    (id) => isBoxOther || mics.includes(id) || micOf(before, id)?.input !== micOf(after, id)?.input,
  );
  const keys = [
    ...(isOther(before.deck, after.deck) ? ['deck'] : []),
    ...pieces.map(pieceKey),
    ...mics.map(micKey),
    ...(isBoxOther ? ['box'] : []),
    ...runs.map(runKey),
  ];
  return new Set(keys.length > 0 ? [...keys, 'check'] : []);
}

const sizeOf = ({ width, depth, height }: Deck) => ({ width, depth, height });

/** What is set by hand when a piece is set down; undefined: it is not there. */
function setPiece({ pieces, player }: Layout, id: Id) {
  const piece = pieces.find((each) => each.id === id);
  const seat = piece?.kind === 'throne' ? player.seatHeight : null;
  return piece && { ...signedPiece(piece), hands: null, seat };
}

/** What is set by hand when a mic is; undefined: it is not there. */
function setMic(layout: Layout, id: Id) {
  const mic = micOf(layout, id);
  if (!mic) return undefined;
  const { hears: _, ...set } = signedMic(mic, layout.ownClasses);
  return set;
}

const micOf = ({ mics }: Layout, id: Id): Mic | undefined => mics.find((mic) => mic.id === id);

const idsOf = (
  before: readonly (Piece | Mic)[],
  after: readonly (Piece | Mic)[],
): readonly Id[] => [...new Set([...before, ...after].map(({ id }) => id))];

const isOther = (before: unknown, after: unknown): boolean =>
  before !== after && differences(before, after).length > 0;
