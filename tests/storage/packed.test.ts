import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { packed, unpacked } from '../../src/storage/packed.ts';

describe('packed and unpacked', () => {
  it('gives back every well-formed text to the letter', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 2000 }), (text) => {
        expect(unpacked(packed(text))).toBe(text);
      }),
    );
  });

  it('a text that is longer than one step of the unpacker', () => {
    const text = Array.from({ length: 30_000 }, (_, index) => `${(index * 7919) % 10_007},`).join(
      '',
    );
    expect(packed(text).length).toBeGreaterThan(3 * 8192);
    expect(unpacked(packed(text))).toBe(text);
  });

  it('says when it is cut off, empty, or something else', () => {
    const bytes = packed('a text of a layout, and some more of it');
    expect(() => unpacked(bytes.subarray(0, bytes.length - 4))).toThrow();
    expect(() => unpacked(new Uint8Array())).toThrow('cut off');
    expect(() => unpacked(new Uint8Array([255, 255, 255]))).toThrow();
  });

  it('stops at what would unpack to more than any layout', () => {
    const bomb = deflateSync(new Uint8Array(60_000_000), { level: 9 });
    expect(bomb.length).toBeLessThan(100_000);
    expect(() => unpacked(bomb)).toThrow('unpacks to more than');
  });
});
