import { describe, expect, test } from 'vitest';
import { type Palette, palettes, type Theme } from '../../src/editor/palette.ts';

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (from memory of its text). */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const channel = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return channel <= 0.03928 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((p, q) => q - p);
  return (high + 0.05) / (low + 0.05);
}

type Colour = Exclude<keyof Palette, 'verdict'>;
const themes: readonly Theme[] = ['dark', 'light'];

describe.each(themes)('the %s palette', (theme) => {
  const palette = palettes[theme];

  test('the contrast of black on white is 21', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });

  test('lines and marks keep 3:1 against the ground they stand on', () => {
    const lines: readonly Colour[] = [
      'hoop',
      'brass',
      'hardware',
      'mic',
      'micStand',
      'cable',
      'selected',
      'zone',
      'contour',
      'deckEdge',
      'stick',
      'focus',
    ];
    for (const line of lines) {
      expect(contrast(palette[line], palette.deck), line).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(palette.deckEdge, palette.floor)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.cable, palette.floor)).toBeGreaterThanOrEqual(3);
    for (const line of ['hoop', 'brass', 'mic', 'micStand', 'selected'] as const) {
      expect(contrast(palette[line], palette.head), line).toBeGreaterThanOrEqual(3);
    }
    for (const colour of Object.values(palette.verdict)) {
      expect(contrast(colour, palette.plate)).toBeGreaterThanOrEqual(3);
      expect(contrast(colour, palette.deck)).toBeGreaterThanOrEqual(3);
      expect(contrast(colour, palette.head)).toBeGreaterThanOrEqual(3);
    }
  });

  test('text keeps 4.5:1', () => {
    for (const text of ['ink', 'inkSoft', 'contour'] as const) {
      for (const ground of ['deck', 'floor', 'head', 'plate', 'halo'] as const) {
        expect(
          contrast(palette[text], palette[ground]),
          `${text} on ${ground}`,
        ).toBeGreaterThanOrEqual(4.5);
      }
    }
    expect(contrast(palette.box, palette.plate)).toBeGreaterThanOrEqual(4.5);
  });
});
