import type { Recording } from './recordedInk.ts';

/** What a canvas is to show. */
export interface Painting extends Recording {
  readonly id: number;
  /** Pixels of the device. */
  readonly width: number;
  readonly height: number;
  /** Pixels of the device in a px of the screen. */
  readonly ratio: number;
}

/** What the page sends to be painted beside it. */
export interface PaintMessage {
  readonly come: readonly { readonly id: number; readonly canvas: OffscreenCanvas }[];
  readonly gone: readonly number[];
  /** Texts that are new; they are numbered on from those before. */
  readonly texts: readonly string[];
  /** Whether all texts are forgotten once this is painted, and numbered anew. */
  readonly forgetsTexts: boolean;
  readonly paintings: readonly Painting[];
}

/** What the page hears: what was painted, its numbers given back; or that pictures were lost and all must be painted again. */
export type PaintedMessage =
  | { readonly painted: readonly Float64Array<ArrayBuffer>[] }
  | { readonly lost: true };
