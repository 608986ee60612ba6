import type { z } from 'zod';
import { findMicClass } from '../catalogue/micClasses.ts';
import type { Id } from '../fields.ts';
import { type Layout, layoutSchema } from '../layout.ts';
import { type Mic, micSchema } from '../mics/mic.ts';
import { isCymbal, isDrum, type Piece, pieceSchema } from '../pieces/piece.ts';
import { canBeHeldBy, carrierOf } from '../references.ts';
import { settled } from './settle.ts';

/**
 * The few ways in which edits change a layout. Every edit is pure: it gives a new layout in which only what changed is new,
 * and the same layout when it had no effect (an unknown id, a value that was there already, a change that rule L1 to L6 of
 * `checkReferences` or a limit forbids). No edit throws.
 */

/** A layout with one part changed, fitted to its limits. */
export function withPart<Key extends keyof Layout>(
  layout: Layout,
  key: Key,
  after: Layout[Key],
): Layout {
  const schema: z.ZodType = layoutSchema.shape[key];
  const value = settled(schema, layout[key], after) as Layout[Key];
  return value === layout[key] ? layout : { ...layout, [key]: value };
}

/**
 * A layout with one piece changed. The id stays; the kind can change inside its family only (one drum into another drum,
 * one cymbal into another cymbal), because mics and legs refer to what the piece is.
 */
export function changePiece(layout: Layout, id: Id, change: (piece: Piece) => Piece): Layout {
  const index = layout.pieces.findIndex((piece) => piece.id === id);
  const before = layout.pieces[index];
  if (!before) return layout;
  const after = settled<Piece>(pieceSchema, before, { ...change(before), id });
  const by = carrierOf(after);
  if (after === before || !sameFamily(before, after)) return layout;
  if (by !== undefined && !canBeHeldBy(layout.pieces, id, by)) return layout;
  return { ...layout, pieces: layout.pieces.with(index, after) };
}

/** A layout with one mic changed. The id stays; what it hears is brought down to pieces that are there, each once. */
export function changeMic(layout: Layout, id: Id, change: (mic: Mic) => Mic): Layout {
  const index = layout.mics.findIndex((mic) => mic.id === id);
  const before = layout.mics[index];
  if (!before) return layout;
  const after = settled<Mic>(micSchema, before, heardOnce(layout, { ...change(before), id }));
  if (after === before || !refersWell(layout, after)) return layout;
  return { ...layout, mics: layout.mics.with(index, after) };
}

/** A list with each entry changed; the same list when every entry stays the same. */
export function mapShared<T>(list: T[], change: (entry: T) => T): T[] {
  const changed = list.map(change);
  return changed.every((entry, index) => entry === list[index]) ? list : changed;
}

/** Whether the class and the mount of a mic name what is there (rules L4 and L5). */
export function refersWell(layout: Layout, { micClass, mount }: Mic): boolean {
  if (!findMicClass(layout, micClass)) return false;
  if (mount.kind === 'clip') {
    return layout.pieces.some((piece) => piece.id === mount.drum && isDrum(piece));
  }
  if (mount.kind === 'plateInKick') {
    return layout.pieces.some((piece) => piece.id === mount.kick && piece.kind === 'kick');
  }
  return true;
}

/** A mic that hears only pieces of the layout, each once. */
export function heardOnce(layout: Layout, mic: Mic): Mic {
  const known = new Set(layout.pieces.map((piece) => piece.id));
  const hears = [...new Set(mic.hears)].filter((id) => known.has(id));
  return hears.length === mic.hears.length ? mic : { ...mic, hears };
}

const sameFamily = (a: Piece, b: Piece): boolean =>
  a.kind === b.kind || (isDrum(a) && isDrum(b)) || (isCymbal(a) && isCymbal(b));
