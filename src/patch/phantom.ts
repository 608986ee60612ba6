import type { Milliamperes, Ohms, Volts } from './quantities.ts';

/** A phantom supply: its voltage, the resistor that feeds each leg, and the most that a mic may draw over both. */
export interface PhantomSupply {
  readonly volts: Volts;
  readonly feed: Ohms;
  readonly most: Milliamperes;
}

/** 48 V as desks give it (IEC 61938, from secondary sources). */
export const P48: PhantomSupply = { volts: 48, feed: 6800, most: 10 };

/**
 * V1 Both legs feed in parallel, so that a mic at the end of some equal supplies is left with volts - current feed / (2 supplies).
 *    None leaves nothing.
 */
export function voltsAtMic(
  { volts, feed }: PhantomSupply,
  current: Milliamperes,
  supplies = 1,
): Volts {
  return supplies === 0 ? 0 : volts - ((current / 1000) * feed) / (2 * supplies);
}

/** V2 What flows when both legs of the line are shorted to the screen. */
export const shortCircuit = ({ volts, feed }: PhantomSupply, supplies = 1): Milliamperes =>
  (1000 * volts * 2 * supplies) / feed;
