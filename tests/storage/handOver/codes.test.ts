import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { readLayout, writeLayout } from '../../../src/layout/read.ts';
import { codesOf, MOST_CODES, readCode } from '../../../src/storage/handOver/codes.ts';
import {
  type Gathering,
  gatheredText,
  missingOf,
  taken,
} from '../../../src/storage/handOver/gather.ts';

const kits = STARTING_KITS.map(({ key, make }) => make(key));
const [kit, other] = kits;
if (!kit || !other) throw new Error('two starting kits are needed');

const gatherAll = (codes: readonly string[]) =>
  codes.reduce<Gathering | null>((before, code) => taken(before, code).gathering, null);

describe('codes of a layout', () => {
  it.each(kits)(
    'Q1: $name needs letters of the alphanumeric mode only, and few codes',
    (layout) => {
      const codes = codesOf(layout);
      for (const code of codes) expect(code).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
      expect(codes.length).toBeLessThanOrEqual(20);
    },
  );

  it('Q4: all are of nearly one length', () => {
    const lengths = codesOf(kit).map((code) => code.length);
    expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(4);
  });

  it('in any order, with repeats, they give the layout back', () => {
    const codes = codesOf(kit);
    const places = codes.map((_, i) => i);
    const rows = fc.tuple(
      fc.shuffledSubarray(places, { minLength: places.length }),
      fc.array(fc.constantFrom(...places)),
    );
    fc.assert(
      fc.property(rows, ([order, again]) => {
        const gathering = gatherAll([...again, ...order].map((i) => codes[i] ?? ''));
        expect(gathering && missingOf(gathering)).toEqual([]);
        const text = gathering && gatheredText(gathering);
        expect(text).toBe(writeLayout(kit));
        expect(readLayout(text ?? '')).toEqual({ ok: true, layout: kit });
      }),
      { numRuns: 30 },
    );
  });

  it('lost ones are named, and the whole waits for them', () => {
    const codes = codesOf(kit);
    const gathering = gatherAll(codes.filter((_, i) => i !== 1 && i !== 3));
    expect(gathering && missingOf(gathering)).toEqual([2, 4]);
    expect(gathering && gatheredText(gathering)).toBeNull();
  });

  it('Q2: codes of another layout are known as such and change nothing', () => {
    const [mine = '', second = ''] = codesOf(kit);
    const begun = taken(null, mine).gathering;
    for (const code of codesOf(other)) {
      expect(taken(begun, code)).toEqual({ gathering: begun, seen: 'other' });
    }
    expect(taken(begun, mine).seen).toBe('again');
    expect(taken(begun, second).seen).toBe('new');
  });

  it('Q3: one letter read wrongly is noticed wherever it is', () => {
    const [code = ''] = codesOf(kit);
    for (let at = 'STROKESPACE.1/'.length; at < code.length; at++) {
      const wrong = code[at] === '7' ? '8' : '7';
      const misread = `${code.slice(0, at)}${wrong}${code.slice(at + 1)}`;
      expect(readCode(misread), `letter ${at}`).toBe('damaged');
    }
    expect(readCode(code.slice(0, -3))).toBe('damaged');
  });

  it.each([
    ['an address', 'https://example.org/', 'foreign'],
    ['nothing', '', 'foreign'],
    ['a version to come', 'STROKESPACE.2/ABC', 'newer'],
    ['a head alone', 'STROKESPACE.1/', 'damaged'],
    ['a huge count', `STROKESPACE.1/0123456789ABCDEF/1/${MOST_CODES + 1}/00000000/AB`, 'damaged'],
  ])('%s is %3$s', (_, text, seen) => {
    expect(taken(null, text)).toEqual({ gathering: null, seen });
  });
});
