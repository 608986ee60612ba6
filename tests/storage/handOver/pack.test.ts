import { deflateRawSync, deflateSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { MOST_CHARACTERS } from '../../../src/layout/read.ts';
import { packed, unpacked } from '../../../src/storage/handOver/pack.ts';

it('gives every text back', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 5000 }), (text) => {
      expect(unpacked(packed(text))).toBe(text);
    }),
  );
});

it('is plain deflate: another program reads it, and the other way round', () => {
  const text = 'the same words, the same words, the same words: größer';
  expect(inflateRawSync(packed(text)).toString('utf8')).toBe(text);
  expect(unpacked(deflateRawSync(Buffer.from(text)))).toBe(text);
});

it('what is cut off, of another kind or empty is refused', () => {
  const whole = packed('a layout with a few words that repeat, repeat and repeat');
  for (let length = 0; length < whole.length; length++) {
    expect(unpacked(whole.subarray(0, length))).toBeNull();
  }
  expect(unpacked(deflateSync(Buffer.from('with a head of zlib')))).toBeNull();
});

it('a few bytes that would become far more than any layout are refused', () => {
  const bomb = deflateRawSync(Buffer.alloc(MOST_CHARACTERS * 20));
  expect(bomb.length).toBeLessThan(MOST_CHARACTERS / 10);
  expect(unpacked(bomb)).toBeNull();
});
