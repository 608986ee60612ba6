import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drumSchema } from '../../../src/layout/pieces/drum.ts';
import {
  CABLE_LENGTH,
  CELSIUS,
  COUNT,
  DECIBELS,
  DIRECTION,
  GATHERED,
  HERTZ,
  KILOGRAMS,
  LENGTH,
  MARGIN,
  OHMS,
  PERCENT,
  SHARE,
  THICKNESS,
} from '../../../src/views/fields/measure.ts';
import { limitsOf, readField, roundedWords, stepped } from '../../../src/views/fields/reading.ts';

const wide = { low: -20_000, high: 20_000 };

describe('typed numbers', () => {
  it('reads lengths in mm, cm, m, inches and feet, bare ones in the unit shown', () => {
    const read = (text: string, unit: 'mm' | 'in' = 'mm') => readField(text, LENGTH, wide, unit);
    expect(read('120')).toEqual({ ok: true, value: 120 });
    expect(read('120 mm', 'in')).toEqual({ ok: true, value: 120 });
    expect(read('14 in')).toEqual({ ok: true, value: 355.59999999999997 });
    expect(read('14"', 'in')).toEqual({ ok: true, value: 355.59999999999997 });
    expect(read('14', 'in')).toEqual({ ok: true, value: 355.59999999999997 });
    expect(read('1,5 m')).toEqual({ ok: true, value: 1500 });
    expect(read(' -30 ')).toEqual({ ok: true, value: -30 });
  });

  it('reads bare cable lengths in m or ft', () => {
    expect(readField('5', CABLE_LENGTH, wide, 'mm')).toEqual({ ok: true, value: 5000 });
    expect(readField('2.5 m', CABLE_LENGTH, wide, 'in')).toEqual({ ok: true, value: 2500 });
    expect(readField('10', CABLE_LENGTH, wide, 'in')).toEqual({ ok: true, value: 3048 });
    expect(readField('750 mm', CABLE_LENGTH, wide, 'mm')).toEqual({ ok: true, value: 750 });
  });

  it('reads angles, temperatures and percentages with or without their sign', () => {
    expect(readField('45°', DIRECTION, wide, 'mm')).toEqual({ ok: true, value: 45 });
    expect(readField('45 deg', DIRECTION, wide, 'mm')).toEqual({ ok: true, value: 45 });
    expect(readField('21,5 °C', CELSIUS, wide, 'mm')).toEqual({ ok: true, value: 21.5 });
    expect(readField('55 %', PERCENT, wide, 'mm')).toEqual({ ok: true, value: 55 });
  });

  it('says what was expected and repeats what was typed', () => {
    const bad = (text: string) => {
      const reading = readField(text, LENGTH, { low: 0, high: 4000 }, 'mm');
      return reading.ok ? '' : reading.message;
    };
    expect(bad('abc')).toBe(
      "“abc” can't be read. Type a length such as 120, 12.5 cm, 1.2 m, 14 in or 5 ft 11 in.",
    );
    expect(bad('12 kg')).toContain("“12 kg” can't be read");
    expect(bad('')).toContain('Nothing was typed');
    expect(bad('1e400')).toContain("can't be read");
    expect(bad('5 m')).toBe('Allowed: 0 to 4000 mm.');
    expect(bad('1,200')).toBe('“1,200” could mean 1.2 or 1200. Type one of them.');
    expect(bad('1.200 mm')).toBe('“1.200 mm” could mean 1.2 or 1200. Type one of them.');
    expect(bad('1.200 kg')).toContain("can't be read");
    expect(bad('x'.repeat(5000)).length).toBeLessThan(120);
  });

  it('takes whole numbers only where things are counted', () => {
    expect(readField('12', COUNT, wide, 'mm')).toEqual({ ok: true, value: 12 });
    expect(readField('12.5', COUNT, wide, 'mm')).toMatchObject({ ok: false });
  });

  it('takes its limits from the schema of the layout', () => {
    expect(limitsOf(drumSchema.shape.diameter)).toEqual({ low: 100, high: 800 });
  });

  it('shows what was typed, a decimal comma too, and reads it back', () => {
    const measures = [LENGTH, THICKNESS, CABLE_LENGTH, DIRECTION, CELSIUS, PERCENT, KILOGRAMS];
    const any = { low: -1e7, high: 1e7 };
    const tenths = fc.integer({ min: -9999, max: 9999 });
    fc.assert(
      fc.property(
        fc.constantFrom(...measures),
        tenths,
        fc.constantFrom('mm', 'in'),
        (measure, n, unit) => {
          const reading = readField(`${n / 10}`.replace('.', ','), measure, any, unit);
          const value = reading.ok ? reading.value : Number.NaN;
          expect(Number(measure.show(value, unit))).toBe(n / 10);
          const again = readField(measure.show(value, unit), measure, any, unit);
          expect(again.ok && again.value).toBeCloseTo(value, 6);
        },
      ),
    );
  });

  it('what was typed finer than a field keeps is rounded as it is shown, and the field says so', () => {
    expect(readField('50.55', MARGIN, wide, 'mm')).toEqual({ ok: true, value: 50.55 });
    const angle = readField('12.3456', DIRECTION, wide, 'mm');
    expect(angle).toEqual({ ok: true, value: 12.35, rounded: '12.35' });
    expect(angle.ok && roundedWords(angle)).toBe('Rounded to 12.35.');
    const third = readField('1/3 in', LENGTH, wide, 'mm');
    expect(third).toEqual({ ok: true, value: 8.47, rounded: '8.47' });
    const text = fc.integer({ min: 0, max: 999_999 }).map((n) => `${n / 10_000}`);
    const all = [
      ...[LENGTH, MARGIN, THICKNESS, CABLE_LENGTH, DIRECTION, CELSIUS, PERCENT, GATHERED],
      ...[KILOGRAMS, OHMS, SHARE, DECIBELS, HERTZ],
    ];
    fc.assert(
      fc.property(
        text,
        fc.constantFrom(...all),
        fc.constantFrom('mm', 'in'),
        (typed, measure, unit) => {
          const reading = readField(typed, measure, wide, unit);
          fc.pre(reading.ok);
          const shown = measure.show(reading.value, unit);
          const again = readField(shown, measure, wide, unit);
          const off = again.ok ? Math.abs(again.value - reading.value) : Number.NaN;
          expect(off).toBeLessThanOrEqual(2e-6);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('reads back what it shows, in either unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9999, max: 9999 }), fc.constantFrom('mm', 'in'), (n, unit) => {
        const reading = readField(LENGTH.show(n, unit), LENGTH, wide, unit);
        expect(reading.ok && Math.abs(reading.value - n)).toBeLessThanOrEqual(
          unit === 'mm' ? 0 : 1.28,
        );
      }),
    );
  });
});

describe('steps', () => {
  it('stay within the limits and on clean numbers', () => {
    expect(stepped(395, 10, { low: 0, high: 400 })).toBe(400);
    expect(stepped(0.1, 0.2, { low: 0, high: 1 })).toBe(0.3);
    expect(stepped(5, -10, { low: 0, high: 400 })).toBe(0);
  });
});
