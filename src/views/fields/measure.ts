import { writeMargin } from '../../units/clearanceText.ts';
import { oClockText } from '../../units/clock.ts';
import { MM_PER_FOOT } from '../../units/inch.ts';
import { keptLength, type LengthUnit, readLength, writeLength } from '../../units/lengthText.ts';
import { inFull, readWithUnit, writeNear, writeNumber } from '../../units/numberText.ts';

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
  /** What was typed as it is kept: rounded where the field could not write it in full. */
  kept(value: number, unit: LengthUnit): number;
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
  show: (value, unit) => writeLength(value, unit),
  unitText: (unit) => unit,
  unitSpoken: (unit) => (unit === 'mm' ? 'millimetres' : 'inches'),
  read: readLength,
  kept: keptLength,
  expected: (unit) =>
    unit === 'mm'
      ? 'a length such as 120, 12.5 cm, 1.2 m, 14 in or 5 ft 11 in'
      : 'a length such as 4.5, 13 1/2, 5 ft 11 in or 120 mm',
  step: lengthStep(mm, inches),
  whole: false,
});

/** A length, a centimetre (half an inch) a press. */
export const LENGTH = lengthWithStep(10, 0.5);
/** A short length where mm matter: 5 mm (0.2 in) a press. */
export const FINE_LENGTH = lengthWithStep(5, 0.2);
/** The margin: as {@link FINE_LENGTH}, written so that no clear mic shows less (M1). */
export const MARGIN: Measure = { ...FINE_LENGTH, show: writeMargin };
/** A stick's thickness and the like: 0.5 mm a press, shown to a tenth. */
export const THICKNESS: Measure = {
  ...lengthWithStep(0.5, 0.02),
  show: (value, unit) => writeLength(value, unit, unit === 'mm' ? 1 : 2),
};
/** Decks and boxes: 10 cm (4 in) a press. */
export const COARSE_LENGTH = lengthWithStep(100, 4);

const PER_CABLE_UNIT: Readonly<Record<LengthUnit, number>> = { mm: 1000, in: MM_PER_FOOT };
/** The decimals in which a cable can be typed. */
const CABLE_DECIMALS = 3;

/** Cables: metres or feet, always with a decimal. */
export const CABLE_LENGTH: Measure = {
  show: (value, unit) => {
    const number = value / PER_CABLE_UNIT[unit];
    const text = String(inFull(number, CABLE_DECIMALS) ?? writeNear(number, 2));
    return text.includes('.') ? text : `${text}.0`;
  },
  unitText: (unit) => (unit === 'mm' ? 'm' : 'ft'),
  unitSpoken: (unit) => (unit === 'mm' ? 'metres' : 'feet'),
  read: (text, unit) => readLength(text, unit === 'mm' ? 'm' : 'ft'),
  kept(value, unit) {
    const isTyped = Object.values(PER_CABLE_UNIT).some(
      (size) => inFull(value / size, CABLE_DECIMALS) !== undefined,
    );
    const size = PER_CABLE_UNIT[unit];
    return isTyped ? value : Number((value / size).toFixed(CABLE_DECIMALS)) * size;
  },
  expected: (unit) =>
    unit === 'mm' ? 'a length such as 5, 2.5 m or 16 ft' : 'a length such as 15, 12 ft 6 in or 5 m',
  step: (unit) => (unit === 'mm' ? 500 : MM_PER_FOOT),
  whole: false,
};

interface Plain {
  readonly unit: string;
  readonly spoken: string;
  readonly accepts: RegExp;
  readonly expected: string;
  readonly step: number;
  readonly whole?: boolean;
  readonly decimals?: number;
}

const decimalsOf = ({ decimals = 1 }: Plain): number => decimals + 1;

const plain = (of: Plain): Measure => ({
  show: (value) => writeNumber(value, decimalsOf(of) - 1, decimalsOf(of)),
  unitText: () => of.unit,
  unitSpoken: () => of.spoken,
  read: (text) => {
    const read = readWithUnit(text);
    return read && of.accepts.test(read.unit) ? read.number : undefined;
  },
  kept: (value) => Number(value.toFixed(decimalsOf(of))) + 0,
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
/** A direction of the kit as the player sees it, said below its field: `About half past 1`. */
export const clockNote = (azimuth: number): string => `About ${oClockText(azimuth)}`;
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
  kept: (value, unit) => PERCENT.kept(100 * value, unit) / 100,
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
