import type { Mm } from '../units/quantity.ts';

/** Lanes of equal width along the axis. */
const LANES = 32;
/** Ranges in a word: one bit of a number each. */
export const WORD = 32;

/**
 * Many ranges along one axis by the lanes in which they begin and end, so that those that another range may meet are told without looking at each: they
 * begin no later than it ends, and end no earlier than it begins. In bits, a word of {@link WORD} ranges at a time.
 */
export class Lanes {
  readonly words: number;
  readonly #low: Mm;
  readonly #perMm: number;
  /** For every lane, word by word: the ranges that begin in it or before it, and those that end in it or after it. */
  readonly #begun: Int32Array;
  readonly #unended: Int32Array;

  /** Where each range begins and ends. */
  constructor(lows: Float64Array, highs: Float64Array) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let range = 0; range < lows.length; range += 1) {
      low = Math.min(low, lows[range] as Mm);
      high = Math.max(high, highs[range] as Mm);
    }
    this.words = Math.ceil(lows.length / WORD);
    this.#low = low;
    this.#perMm = high > low ? LANES / (high - low) : 0;
    this.#begun = new Int32Array(LANES * this.words);
    this.#unended = new Int32Array(LANES * this.words);
    for (let range = 0; range < lows.length; range += 1) {
      const word = Math.floor(range / WORD);
      const bit = 1 << (range % WORD);
      const first = this.laneOf(lows[range] ?? 0);
      const last = this.laneOf(highs[range] ?? 0);
      for (let lane = first; lane < LANES; lane += 1) {
        this.#begun[lane * this.words + word] = (this.#begun[lane * this.words + word] ?? 0) | bit;
      }
      for (let lane = 0; lane <= last; lane += 1) {
        this.#unended[lane * this.words + word] =
          (this.#unended[lane * this.words + word] ?? 0) | bit;
      }
    }
  }

  /** The lane of a place; of one before or behind all lanes, the first or the last. */
  laneOf(at: Mm): number {
    return Math.max(0, Math.min(LANES - 1, Math.floor((at - this.#low) * this.#perMm)));
  }

  /** Of a word of ranges, those that one from a first lane to a last one may meet. */
  met(first: number, last: number, word: number): number {
    const begun = this.#begun[last * this.words + word] ?? 0;
    return begun & (this.#unended[first * this.words + word] ?? 0);
  }
}

/** The number of the lowest bit that is set; one is. */
export const lowestBit = (bits: number): number => 31 - Math.clz32(bits & -bits);
