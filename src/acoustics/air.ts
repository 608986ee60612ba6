import type { Celsius, Decibels, Mm, Percent } from '../units/quantity.ts';
import { absorption } from './absorption.ts';
import type { Hertz, MetresPerSecond } from './quantities.ts';

/** What a venue says of its air. */
export interface AirState {
  readonly temperature: Celsius;
  readonly humidity: Percent;
}

/** The air of a venue and what follows from it. */
export interface Air extends AirState {
  /** H1, by which every delay is computed. */
  readonly speed: MetresPerSecond;
  /** H2, the second figure: the same with humidity. */
  readonly humidSpeed: MetresPerSecond;
  /** Whether H2 holds at this temperature. */
  readonly humidSpeedIsValid: boolean;
  /** What the estimate leaves out: the loss in air at 8 kHz over 3 m, about the longest way across a kit. */
  readonly lossLeftOut: Decibels;
}

const KELVIN = 273.15;
const PASCAL = 101_325;
/** Mole fraction of carbon dioxide: 400 ppm. */
const CARBON_DIOXIDE = 400e-6;
/** Cramer's equation is stated for 0 to 30 degrees C. */
const HUMID_RANGE: readonly [Celsius, Celsius] = [0, 30];
const LOSS_AT: Hertz = 8000;
const LOSS_OVER: Mm = 3000;

/** H1 The speed of sound by temperature alone: 343.2 sqrt(T / 293.15) (ISO 9613-1:1993, A.5). */
export const speedOfSound = (temperature: Celsius): MetresPerSecond =>
  343.2 * Math.sqrt((temperature + KELVIN) / 293.15);

/**
 * H2 The speed of sound with humidity, at 101.325 kPa and 400 ppm carbon dioxide, by Cramer's equation (J. Acoust. Soc. Am.
 *    93(5), 2510-2516, 1993). Stated for 0 to 30 degrees C, within 300 ppm there.
 */
export function humidSpeedOfSound({ temperature: t, humidity }: AirState): MetresPerSecond {
  const p = PASCAL;
  const c = CARBON_DIOXIDE;
  const w = (humidity / 100) * saturatedWaterVapour(t);
  return (
    331.5024 +
    0.603055 * t -
    0.000528 * t * t +
    (51.471935 + 0.1495874 * t - 0.000782 * t * t) * w +
    (-1.82e-7 + 3.73e-8 * t - 2.93e-10 * t * t) * p +
    (-85.20931 - 0.228525 * t + 5.91e-5 * t * t) * c -
    2.835149 * w * w -
    2.15e-13 * p * p +
    29.179762 * c * c +
    0.000486 * w * p * c
  );
}

/** Mole fraction of water vapour in saturated air, as in the same paper. */
function saturatedWaterVapour(t: Celsius): number {
  const kelvin = t + KELVIN;
  const pressure = Math.exp(
    1.2811805e-5 * kelvin * kelvin - 1.9509874e-2 * kelvin + 34.04926034 - 6353.6311 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * PASCAL + 5.6e-7 * t * t;
  return (enhancement * pressure) / PASCAL;
}

/** The air of a venue. */
export function airOf({ temperature, humidity }: AirState): Air {
  const [low, high] = HUMID_RANGE;
  const state = { temperature, humidity };
  return {
    ...state,
    speed: speedOfSound(temperature),
    humidSpeed: humidSpeedOfSound(state),
    humidSpeedIsValid: temperature >= low && temperature <= high,
    lossLeftOut: absorption(state, LOSS_AT) * (LOSS_OVER / 1000),
  };
}
