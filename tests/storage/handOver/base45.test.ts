import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase45, toBase45 } from '../../../src/storage/handOver/base45.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('Base45 by RFC 9285', () => {
  // Examples 1 to 3 of section 4.3 and the example of section 4.4.
  it.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('%s is %s', (text, coded) => {
    expect(toBase45(bytesOf(text))).toBe(coded);
    expect(fromBase45(coded)).toEqual(bytesOf(text));
  });

  // Section 6: what decodes to more than its bytes can hold is refused.
  it.each(['GGW', ':::', 'A', 'ABCD', '::', 'bb8', 'BB8 ', 'BBé'])('%s is refused', (coded) => {
    expect(fromBase45(coded)).toBeNull();
  });

  it('the largest pair is taken', () => {
    expect(fromBase45('FGW')).toEqual(Uint8Array.of(0xff, 0xff));
  });

  it('gives every row of bytes back', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(fromBase45(toBase45(bytes))).toEqual(Uint8Array.from(bytes));
      }),
    );
  });
});
