/**
 * Quantities that do not mix. A bare number may become any of them (a literal, or the result of arithmetic), but a value
 * that is already one kind is refused where another is expected: `Radians` given to a parameter of `Degrees` does not compile.
 */
type Quantity<Unit extends string> = number & { readonly __unit?: Unit };

/** Lengths, heights and distances: millimetres, everywhere. */
export type Mm = Quantity<'mm'>;
/** Angles in files and on screen. */
export type Degrees = Quantity<'deg'>;
/** Angles inside computations. */
export type Radians = Quantity<'rad'>;
/** Times: milliseconds. */
export type Ms = Quantity<'ms'>;
/** Levels and level differences. */
export type Decibels = Quantity<'dB'>;
/** Temperatures. */
export type Celsius = Quantity<'degC'>;
/** Relative humidity. */
export type Percent = Quantity<'%'>;
/** Masses. */
export type Kilograms = Quantity<'kg'>;
