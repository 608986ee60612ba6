import type { Id } from './fields.ts';

/** Keys of the set-up steps of a piece, a mic and a mic's cable; `deck`, `box` and `check` are there once and are their own keys. */
export const pieceKey = (piece: Id): string => `piece:${piece}`;
export const micKey = (mic: Id): string => `mic:${mic}`;
export const runKey = (mic: Id): string => `run:${mic}`;
