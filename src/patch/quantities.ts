/** Frequencies. */
export type Hertz = number & { readonly __unit?: 'Hz' };
/** Impedances and resistances. */
export type Ohms = number & { readonly __unit?: 'ohm' };
/** Voltages. */
export type Volts = number & { readonly __unit?: 'V' };
/** Currents. */
export type Milliamperes = number & { readonly __unit?: 'mA' };
