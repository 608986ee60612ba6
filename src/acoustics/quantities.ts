/** Frequencies. */
export type Hertz = number & { readonly __unit?: 'Hz' };
/** Speeds. A metre per second is a millimetre per millisecond. */
export type MetresPerSecond = number & { readonly __unit?: 'm/s' };
