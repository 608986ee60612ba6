import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalText, digestOf } from '../../src/layout/digest.ts';

/**
 * The published vectors of RFC 8785 (cyberphone/json-canonicalization@19d51d7 `testdata/`), inputs as published, with the byte
 * count and the two ends of the SHA-256 of the expected output.
 */
const published: readonly (readonly [string, string, number, string])[] = [
  ['arrays', '[56,{"d":true,"10":null,"1":[ ]}]', 32, '099601b1…ac42'],
  [
    'structures',
    '{"1":{"f":{"f":"hi","F":5},"\\n":56.0},"10":{},"":"empty","a":{},"111":[{"e":"yes","E":"no"}],"A":{}}',
    98,
    '605f6500…95d5',
  ],
  [
    'values',
    String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
    118,
    '2d5e01a3…aacb',
  ],
  ['unicode', '{"Unnormalized Unicode":"A\\u030a"}', 30, '0d99aad9…81d3'],
  [
    'french',
    '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"}',
    130,
    'd99d0ebd…7ed5',
  ],
  [
    'weird',
    String.raw`{"\u20ac":"Euro Sign","\r":"Carriage Return","\u000a":"Newline","1":"One","\u0080":"Control\u007f","\ud83d\ude02":"Smiley","\u00f6":"Latin Small Letter O With Diaeresis","\ufb33":"Hebrew Letter Dalet With Dagesh","</script>":"Browser Challenge"}`,
    214,
    '6af595a9…94d1',
  ],
];

/** RFC 8785 Appendix B: IEEE 754 bits and the text of the number. */
const numbers: readonly (readonly [string, string])[] = [
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
];

const ofBits = (bits: string): number => Buffer.from(bits, 'hex').readDoubleBE();

describe('the RFC 8785 text', () => {
  test.each(published)('of the published vector %s', (_, input, bytes, ends) => {
    const [start, end] = ends.split('…');
    const text = canonicalText(JSON.parse(input));
    expect(Buffer.byteLength(text)).toBe(bytes);
    expect(digestOf(text)).toMatch(new RegExp(`^${start}.*${end}$`));
  });

  test.each(numbers)('of the number with the bits %s is %s', (bits, text) => {
    expect(canonicalText(ofBits(bits))).toBe(text);
  });

  test('puts keys that look like numbers in the order of their characters', () => {
    expect(canonicalText({ '9': 2, '10': 1 })).toBe('{"10":1,"9":2}');
  });

  test.each([
    ['NaN', Number.NaN],
    ['Infinity', { a: [Number.POSITIVE_INFINITY] }],
    ['1e999, which JSON text can hold', JSON.parse('{"a":1e999}')],
    ['half a surrogate pair', { a: '\ud83d' }],
    ['nothing', undefined],
  ])('is refused of %s', (_, value) => {
    expect(() => canonicalText(value)).toThrow(RangeError);
  });

  test('keeps the value, and does not change when it is read and written again', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalText(value);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(canonicalText(JSON.parse(text))).toBe(text);
      }),
    );
  });

  test('is the same in whatever order the fields were written', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (fields) => {
        const turned = Object.fromEntries(Object.entries(fields).reverse());
        expect(canonicalText(turned)).toBe(canonicalText(fields));
      }),
    );
  });
});

describe('the SHA-256', () => {
  // FIPS 180-4 examples and NIST CAVS 21.3 SHA256ShortMsg.
  test.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('of a published text', (text, digest) => {
    expect(digestOf(text)).toBe(digest);
  });

  test("is that of Node's own implementation for any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        expect(digestOf(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
      }),
    );
  });
});
