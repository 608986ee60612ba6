import { expect, test } from 'vitest';
import { usualPiece } from '../../../src/layout/catalogue/defaults/usualPieces.ts';
import {
  nominalSizeOf,
  nominalSizes,
  type SizedKind,
} from '../../../src/layout/catalogue/sizes.ts';
import { pieceSchema } from '../../../src/layout/pieces/piece.ts';

const kinds: readonly SizedKind[] = [
  'kick',
  'snare',
  'rackTom',
  'floorTom',
  'hiHat',
  'crash',
  'ride',
  'splash',
  'china',
  'percussion',
];

test.each(kinds)('%s: nominal inches are exact mm, 25.4 each', (kind) => {
  for (const size of nominalSizes(kind)) {
    // In tenths of a mm, 254 to the inch, both sides are whole numbers for sizes in half inches.
    expect(Math.round(size.diameter * 10)).toBe(size.diameterInches * 254);
    expect(size.diameter).toBeCloseTo(size.diameterInches * 25.4, 10);
    if (size.depthInches !== null) expect(size.depth).toBeCloseTo(size.depthInches * 25.4, 10);
  }
});

test.each(kinds)('%s: every size offered is one a layout may hold', (kind) => {
  for (const { diameter, depth } of nominalSizes(kind)) {
    const sized = { ...usualPiece(kind, 'x'), diameter, ...(depth === null ? {} : { depth }) };
    expect(pieceSchema.safeParse(sized).success).toBe(true);
  }
});

test.each(kinds)('%s: sizes stand in order and each is found again by its mm', (kind) => {
  const sizes = nominalSizes(kind);
  const rank = sizes.map(({ diameter, depth }) => diameter * 1000 + (depth ?? 0));
  expect(rank).toEqual(rank.toSorted((a, b) => a - b));
  for (const size of sizes) expect(nominalSizeOf(kind, size.diameter, size.depth)).toBe(size);
  expect(nominalSizeOf(kind, 333, 111)).toBeUndefined();
});

// Set-up guides agree on these sets (diameter x depth, inches).
test.each([
  ['kick', 22, 18],
  ['kick', 20, 16],
  ['rackTom', 12, 9],
  ['rackTom', 13, 10],
  ['rackTom', 10, 8],
  ['floorTom', 16, 16],
  ['floorTom', 14, 14],
  ['snare', 14, 5.5],
] as const)('the usual %s of %d x %d in is offered', (kind, diameter, depth) => {
  const found = nominalSizes(kind).filter(
    (size) => size.diameterInches === diameter && size.depthInches === depth,
  );
  expect(found).toHaveLength(1);
});
