import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joined, RecordReader, recordBytes } from '../../../src/storage/records/record.ts';

const anyRecord = fc.record({
  meta: fc.oneof(
    fc.record({
      kind: fc.constant('point' as const),
      id: fc.constantFrom('one', 'two'),
      revision: fc.integer({ min: 1, max: 99 }),
      name: fc.string({ maxLength: 20 }),
      shared: fc.boolean(),
    }),
    fc.record({ kind: fc.constant('forgotten' as const), id: fc.constantFrom('one', 'two') }),
  ),
  // The magic itself may stand inside a body.
  body: fc.oneof(
    fc.uint8Array({ maxLength: 60 }),
    fc.constant(new TextEncoder().encode('SSr1SSr1SSr1SSr1SSr1')),
  ),
});
const records = fc.array(anyRecord, { maxLength: 8 });

/** What a reader gives when the bytes come in pieces of a length. */
function read(bytes: Uint8Array, piece: number) {
  const reader = new RecordReader();
  const found = [];
  for (let at = 0; at < bytes.length; at += piece) {
    found.push(...reader.push(bytes.slice(at, at + piece)));
  }
  found.push(...reader.end());
  return { found, passedOver: reader.passedOver };
}

describe('records', () => {
  it('come back as they were, in whatever pieces', () => {
    fc.assert(
      fc.property(records, fc.integer({ min: 1, max: 200 }), (given, piece) => {
        expect(read(recordBytes(given), piece)).toEqual({ found: given, passedOver: 0 });
      }),
    );
  });

  it('law: a damaged byte costs at most the record that it is in', () => {
    fc.assert(
      fc.property(
        records.filter((given) => given.length > 0),
        fc.nat(),
        fc.integer({ min: 1, max: 255 }),
        (given, where, by) => {
          const parts = given.map((one) => recordBytes([one]));
          const bytes = joined(parts);
          const at = where % bytes.length;
          bytes[at] = (bytes[at] ?? 0) ^ by;
          let end = 0;
          const hit = parts.findIndex(({ length }) => {
            end += length;
            return at < end;
          });
          const { found } = read(bytes, 1000);
          expect(found).toEqual(given.filter((_, index) => index !== hit));
        },
      ),
    );
  });

  it('law: what is cut off keeps every record before the cut', () => {
    fc.assert(
      fc.property(records, fc.double({ min: 0, max: 1, noNaN: true }), (given, share) => {
        const bytes = recordBytes(given);
        const cut = bytes.slice(0, Math.floor(bytes.length * share));
        const { found, passedOver } = read(cut, 64);
        expect(found).toEqual(given.slice(0, found.length));
        expect(recordBytes(found).length + passedOver).toBe(cut.length);
      }),
    );
  });

  it('what is no record at all is passed over', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(read(bytes, 50)).toEqual({ found: [], passedOver: bytes.length });
      }),
    );
  });
});
