import type { MicClass } from '../layout/mics/micClass.ts';
import type { Celsius, Decibels, Mm } from '../units/quantity.ts';

/** A kind of cable: its conductors and what lies between them. */
export interface CableKind {
  /** Resistance of one conductor at 20 degrees C, ohm per km. */
  readonly resistance: number;
  /** Capacitance between the conductors, pF per metre. */
  readonly capacitance: number;
}

/**
 * Resistance of one conductor by its cross-section in mm2, ohm per km at 20 degrees C, plain copper, maximum. From 0.5 mm2
 * up: IEC 60228, class 5; below, outside that standard's range: DIN VDE 0295.
 */
export const RESISTANCE_BY_SECTION: ReadonlyMap<number, number> = new Map([
  [0.14, 134],
  [0.22, 96],
  [0.25, 76],
  [0.34, 53],
  [0.5, 39],
  [0.75, 26],
  [1, 19.5],
  [1.5, 13.3],
]);

/** A usual mic cable: 0.22 mm2 (DIN VDE 0295), 100 pF/m typical. Which section is usual: common practice, no source. */
export const USUAL_CABLE: CableKind = { resistance: 96, capacitance: 100 };

/** Source impedance by type of mic, ohm. Common practice, no source. */
export const SOURCE_IMPEDANCE: Readonly<Record<MicClass['type'], number>> = {
  dynamic: 200,
  condenser: 150,
  ribbon: 300,
  boundary: 150,
};

/** What a signal passes on its way. */
export interface SignalPath {
  /** Run and multicore together, mm. */
  readonly length: Mm;
  /** Of the mic, ohm. */
  readonly source: number;
  /** Input impedance of what it is plugged into, ohm. */
  readonly load: number;
  readonly temperature: Celsius;
}

/** Input impedance of a usual mic input, ohm. Common practice, no source. */
export const USUAL_LOAD = 1500;

export interface ElectricalFacts {
  /** Out over one conductor and back over the other, ohm. */
  readonly loop: number;
  /** What the loop takes from the level, compared with no cable at all. */
  readonly levelLoss: Decibels;
  /** Where the cable's capacitance has taken 3 dB, Hz; infinite for no cable. */
  readonly corner: number;
  /** What it takes at 20 kHz. */
  readonly lossAt20k: Decibels;
  /** What of it is worth telling. */
  readonly matters: readonly ('loop' | 'corner')[];
}

const HIGHEST_HEARD = 20_000;
/** Rise of copper's resistance per degree, from memory. */
const PER_DEGREE = 0.00393;
/** From how much a loss is told. Common practice, no source. */
export const WORTH_TELLING: Decibels = 0.5;

const METRE: Mm = 1000;
const KILOMETRE: Mm = 1e6;

/**
 * What a length of cable does to a signal.
 *
 * E1 The loop is twice a conductor's resistance, which rises with temperature as R20 (1 + 0.00393 (t - 20)).
 * E2 The level lost is that of the divider of source, loop and load, by that of source and load alone.
 * E3 The corner is 1 / (2 pi R C), R the source's impedance, the load neglected; the loss at 20 kHz is that of one RC.
 * E4 Either is told from a loss of 0.5 dB up.
 */
export function electricalFacts(
  { length, source, load, temperature }: SignalPath,
  { resistance, capacitance }: CableKind = USUAL_CABLE,
): ElectricalFacts {
  const warm = 1 + PER_DEGREE * (temperature - 20);
  const loop = (2 * resistance * warm * length) / KILOMETRE;
  const levelLoss = 20 * Math.log10((source + loop + load) / (source + load));
  const farads = (capacitance * 1e-12 * length) / METRE;
  const corner = 1 / (2 * Math.PI * source * farads);
  const lossAt20k = 10 * Math.log10(1 + (HIGHEST_HEARD / corner) ** 2);
  return {
    loop,
    levelLoss,
    corner,
    lossAt20k,
    matters: [
      ...(levelLoss >= WORTH_TELLING ? (['loop'] as const) : []),
      ...(lossAt20k >= WORTH_TELLING ? (['corner'] as const) : []),
    ],
  };
}
