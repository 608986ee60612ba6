import type { Celsius, Decibels, Percent } from '../units/quantity.ts';
import type { Hertz } from './quantities.ts';

const REFERENCE_KELVIN = 293.15;
const TRIPLE_POINT_KELVIN = 273.16;

/**
 * H3 The attenuation of a tone in air at 101.325 kPa, dB per metre (ISO 9613-1:1993, equations 3 to 5). The estimates leave
 *    it out: across a kit it stays far below what a mic's placing changes.
 */
export function absorption(
  air: { readonly temperature: Celsius; readonly humidity: Percent },
  frequency: Hertz,
): Decibels {
  const kelvin = air.temperature + 273.15;
  const warmth = kelvin / REFERENCE_KELVIN;
  const vapour = air.humidity * 10 ** (-6.8346 * (TRIPLE_POINT_KELVIN / kelvin) ** 1.261 + 4.6151);
  const oxygen = 24 + (4.04e4 * vapour * (0.02 + vapour)) / (0.391 + vapour);
  const nitrogen = warmth ** -0.5 * (9 + 280 * vapour * Math.exp(-4.17 * (warmth ** (-1 / 3) - 1)));
  const square = frequency * frequency;
  const classical = 1.84e-11 * Math.sqrt(warmth);
  const relaxed =
    (0.01275 * Math.exp(-2239.1 / kelvin)) / (oxygen + square / oxygen) +
    (0.1068 * Math.exp(-3352 / kelvin)) / (nitrogen + square / nitrogen);
  return 8.686 * square * (classical + warmth ** -2.5 * relaxed);
}
