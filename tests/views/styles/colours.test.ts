import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const sheet = readFileSync(
  new URL('../../../src/views/styles/colours.css', import.meta.url),
  'utf8',
);

function coloursOf(selector: string): ReadonlyMap<string, string> {
  const start = sheet.indexOf(`${selector} {`);
  const block = sheet.slice(start, sheet.indexOf('}', start));
  return new Map(
    Array.from(block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g), ([, name = '', value = '']) => [
      name,
      value,
    ]),
  );
}

/** Relative luminance and contrast by WCAG 2.2, 'relative luminance' and 'contrast ratio'. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

const grounds = ['floor', 'panel', 'raised', 'entry'];
const tinted = ['clear-ground', 'tight-ground', 'struck-ground', 'accent-ground'];

describe.each([
  ['dark', ':root'],
  ['light', ':root[data-theme="light"]'],
])('the %s colours', (_theme, selector) => {
  const colours = coloursOf(selector);
  const at = (name: string): string => {
    const value = colours.get(name);
    if (value === undefined) throw new Error(`colours.css must define --${name} for ${selector}`);
    return value;
  };
  const least = (texts: readonly string[], on: readonly string[]): number =>
    Math.min(...texts.flatMap((text) => on.map((ground) => contrast(at(text), at(ground)))));

  it('keep key numbers at 7:1 (WCAG 2.2, 1.4.6)', () => {
    expect(least(['ink'], [...grounds, ...tinted])).toBeGreaterThanOrEqual(7);
  });

  it('keep all other text at 4.5:1 (WCAG 2.2, 1.4.3)', () => {
    const texts = ['soft', 'accent', 'clear', 'tight', 'struck'];
    expect(least(texts, [...grounds])).toBeGreaterThanOrEqual(4.5);
    expect(least(['soft'], tinted)).toBeGreaterThanOrEqual(4.5);
    for (const verdict of ['clear', 'tight', 'struck']) {
      expect(least([verdict], [`${verdict}-ground`])).toBeGreaterThanOrEqual(4.5);
    }
    expect(contrast(at('on-accent'), at('accent'))).toBeGreaterThanOrEqual(4.5);
  });

  it('keep the edges of fields at 3:1 (WCAG 2.2, 1.4.11)', () => {
    expect(least(['edge', 'accent'], ['panel', 'entry'])).toBeGreaterThanOrEqual(3);
  });
});
