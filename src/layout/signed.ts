import { canonicalText, digestOf } from './digest.ts';
import type { Layout } from './layout.ts';
import type { Mic } from './mics/mic.ts';
import type { MicClass } from './mics/micClass.ts';
import type { Piece } from './pieces/piece.ts';
import { checkLayout } from './read.ts';
import type { SignOff } from './signOff.ts';

/**
 * What a sign-off is bound to:
 * N1 the player, whole: whose body and strokes the clearances are of;
 * N2 every piece without its name;
 * N3 every mic without its name and its box input, with what it hears, how it is held, and its class: by name when it is built in, with
 *    all of its facts when it is the user's own;
 * N4 mics and pieces in the order of their ids: the order of a list is no place on the stage.
 * So box, cables, patch, deck, venue, units, margin and the names of channels can change and the sign-off holds.
 */
export type SignedParts = Pick<Layout, 'player' | 'pieces' | 'mics' | 'ownClasses'>;

/** A piece as it is signed (N2). */
export function signedPiece({ name: _, ...signed }: Piece) {
  return signed;
}

/** A mic as it is signed (N3). */
export function signedMic({ name: _, input: __, ...signed }: Mic, ownClasses: readonly MicClass[]) {
  const own = ownClasses.find(({ id }) => id === signed.micClass);
  return own ? { ...signed, own: factsOf(own) } : signed;
}

const factsOf = ({ id: _, name: __, ...facts }: MicClass) => facts;

/**
 * The text that is signed: the RFC 8785 form of `{ mics, pieces, player }` (N1 to N4).
 *
 * @throws {RangeError} When a number is not finite.
 */
export const signedText = ({ player, pieces, mics, ownClasses }: SignedParts): string =>
  canonicalText({
    mics: mics.map((mic) => signedMic(mic, ownClasses)).toSorted(byId),
    pieces: pieces.map(signedPiece).toSorted(byId),
    player,
  });

const byId = (p: { readonly id: string }, q: { readonly id: string }): number =>
  p.id < q.id ? -1 : Number(p.id > q.id);

/** Whether the digest is that of the text beside it. */
export const isWhole = ({ signed, digest }: Pick<SignOff, 'signed' | 'digest'>): boolean =>
  digestOf(signed) === digest;

/**
 * The kit as it was signed, brought to this version's shapes so that it can be set beside the kit of now; undefined when the text holds no
 * kit. Names are not signed, so that ids stand in for them. What is not signed is taken from `layout`.
 */
export function signedKit(signOff: SignOff, layout: Layout): SignedParts | undefined {
  const parts = partsIn(signOff.signed);
  if (!parts) return undefined;
  const read = checkLayout({
    ...layout,
    ...parts,
    schema: signOff.form,
    patch: { ...layout.patch, channels: [], splits: [], ticks: [], lineCheck: [] },
    signOffs: [],
  });
  if (!read.ok) return undefined;
  const { player, pieces, mics, ownClasses } = read.layout;
  return { player, pieces, mics, ownClasses };
}

/** The parts as a document has them; no validator has seen them. */
function partsIn(text: string): Readonly<Record<keyof SignedParts, unknown>> | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isRecord(value) || !Array.isArray(value['mics']) || !Array.isArray(value['pieces'])) {
    return undefined;
  }
  const mics = value['mics'].filter(isRecord);
  const owns = new Map(
    mics.flatMap(({ micClass, own }) =>
      isRecord(own) ? [[micClass, { ...own, id: micClass, name: micClass }] as const] : [],
    ),
  );
  return {
    player: value['player'],
    pieces: value['pieces'].filter(isRecord).map((piece) => ({ ...piece, name: piece['id'] })),
    mics: mics.map(({ own: _, ...mic }) => ({ ...mic, name: mic['id'], input: null })),
    ownClasses: [...owns.values()],
  };
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
