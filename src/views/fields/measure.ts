import { toInches } from '../../units/inch.ts';
import {
  type LengthUnit,
  readLength,
  showLengthNumber,
  showLongLength,
} from '../../units/lengthText.ts';

/** How one kind of quantity is shown, stepped and read in a field. Values are what the layout stores. */
export interface Measure {
  /** The number as the field shows it, without its unit. */
  show(value: number, unit: LengthUnit): string;
  /** The unit beside the number; empty for a bare count. */
  unitText(unit: LengthUnit): string;
  /** The unit as it is read aloud. */
  unitSpoken(unit: LengthUnit): string;
  /** What a person typed; undefined when it is not this quantity. */
  read(text: string, unit: LengthUnit): number | undefined;
  /** What could have been typed. */
  expected(unit: LengthUnit): string;
  /** One press of a step button. */
  step(unit: LengthUnit): number;
  readonly whole: boolean;
}

const lengthStep =
  (mm: number, inches: number) =>
  (unit: LengthUnit): number =>
    unit === 'mm' ? mm : inches * 25.4;

const lengthWithStep = (mm: number, inches: number): Measure => ({
  show: showLengthNumber,
  unitText: (unit) => unit,
  unitSpoken: (unit) => (unit === 'mm' ? 'millimetres' : 'inches'),
  read: readLength,
  expected: (unit) =>
    unit === 'mm'
      ? 'a length such as 120, 120 mm or 14 in'
      : 'a length such as 4.5, 13 1/2 or 120 mm',
  step: lengthStep(mm, inches),
  whole: false,
});

/** A length, a centimetre (half an inch) a press. */
export const LENGTH = lengthWithStep(10, 0.5);
/** A short length where mm matter: 5 mm (0.2 in) a press. */
export const FINE_LENGTH = lengthWithStep(5, 0.2);
/** A stick's thickness and the like: 0.5 mm a press, shown to a tenth. */
export const THICKNESS: Measure = {
  ...lengthWithStep(0.5, 0.02),
  show: (value, unit) =>
    unit === 'mm'
      ? String(Math.round(value * 10) / 10 + 0)
      : String(Math.round(toInches(value) * 100) / 100 + 0),
};
/** Decks and boxes: 10 cm (4 in) a press. */
export const COARSE_LENGTH = lengthWithStep(100, 4);

/** Cables: metres or feet. */
export const CABLE_LENGTH: Measure = {
  show: (value, unit) => showLongLength(value, unit).replace(/ .*$/, ''),
  unitText: (unit) => (unit === 'mm' ? 'm' : 'ft'),
  unitSpoken: (unit) => (unit === 'mm' ? 'metres' : 'feet'),
  read: (text, unit) =>
    /[a-z"]\s*$/i.test(text)
      ? readLength(text, unit)
      : readLength(`${text} ${unit === 'mm' ? 'm' : 'ft'}`, unit),
  expected: (unit) =>
    unit === 'mm' ? 'a length such as 5 or 2.5 m' : 'a length such as 15 or 15 ft',
  step: (unit) => (unit === 'mm' ? 500 : 304.8),
  whole: false,
};

/** Reads a number with point or comma, with one of the given units after it or none. */
function readNumber(text: string, units: RegExp): number | undefined {
  const match = /^\s*([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(.*?)\s*$/.exec(text);
  if (!match?.[1] || !units.test(match[2] ?? '')) return undefined;
  return Number(match[1].replace(',', '.'));
}

const tenths = (value: number): string => String(Math.round(value * 10) / 10 + 0);

interface Plain {
  readonly unit: string;
  readonly spoken: string;
  readonly accepts: RegExp;
  readonly expected: string;
  readonly step: number;
  readonly whole?: boolean;
  readonly decimals?: number;
}

const plain = (of: Plain): Measure => ({
  show: (value) =>
    of.decimals === undefined ? tenths(value) : String(Number(value.toFixed(of.decimals)) + 0),
  unitText: () => of.unit,
  unitSpoken: () => of.spoken,
  read: (text) => readNumber(text, of.accepts),
  expected: () => of.expected,
  step: () => of.step,
  whole: of.whole ?? false,
});

const degrees = (step: number): Measure =>
  plain({
    unit: '°',
    spoken: 'degrees',
    accepts: /^(°|deg|degrees?)?$/i,
    expected: 'an angle in degrees such as 45',
    step,
  });

/** Directions on the plan, 5 degrees a press. */
export const DIRECTION = degrees(5);
/** Tilts and pitches, 1 degree a press. */
export const TILT = degrees(1);

export const CELSIUS = plain({
  unit: '°C',
  spoken: 'degrees Celsius',
  accepts: /^(°|°?c)?$/i,
  expected: 'a temperature in °C such as 20',
  step: 1,
});

export const PERCENT = plain({
  unit: '%',
  spoken: 'percent',
  accepts: /^%?$/,
  expected: 'a percentage such as 50',
  step: 5,
});

/** A share of 1 that is shown as a percentage, 10 % a press. */
export const GATHERED: Measure = {
  ...PERCENT,
  show: (value, unit) => PERCENT.show(100 * value, unit),
  read: (text, unit) => {
    const percent = PERCENT.read(text, unit);
    return percent === undefined ? undefined : percent / 100;
  },
  step: () => 0.1,
};

export const COUNT = plain({
  unit: '',
  spoken: '',
  accepts: /^$/,
  expected: 'a whole number',
  step: 1,
  whole: true,
});

export const KILOGRAMS = plain({
  unit: 'kg',
  spoken: 'kilograms',
  accepts: /^(kg)?$/i,
  expected: 'a mass in kg such as 0.3',
  step: 0.05,
  decimals: 2,
});

/** Impedances, 100 ohms a press. */
export const OHMS = plain({
  unit: 'Ω',
  spoken: 'ohms',
  accepts: /^(Ω|ohms?)?$/i,
  expected: 'an impedance in ohms such as 2000',
  step: 100,
  decimals: 0,
});

/** A plain share such as the A of a pattern. */
export const SHARE = plain({
  unit: '',
  spoken: '',
  accepts: /^$/,
  expected: 'a number such as 0.5',
  step: 0.05,
  decimals: 3,
});

export const DECIBELS = plain({
  unit: 'dB',
  spoken: 'decibels',
  accepts: /^(dB)?$/i,
  expected: 'a level in dB such as 95',
  step: 1,
});

export const HERTZ = plain({
  unit: 'Hz',
  spoken: 'hertz',
  accepts: /^(Hz)?$/i,
  expected: 'a frequency in Hz such as 190',
  step: 1,
  decimals: 0,
});
