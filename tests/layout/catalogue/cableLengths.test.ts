import { expect, test } from 'vitest';
import { carriedOf, offeredLengths } from '../../../src/layout/catalogue/cableLengths.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { setStock, setUnits } from '../../../src/layout/edit/stage.ts';
import type { Layout } from '../../../src/layout/layout.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;
const usual = offeredLengths({ ...kit, cabling: { ...kit.cabling, stock: [] } });

test('a length of which none is carried stays offered, at 0, and can be brought back', () => {
  expect(usual).toEqual(kit.cabling.stock.map(({ length }) => length));
  const without = setStock(kit, 10_000, 0);
  expect(offeredLengths(without)).toEqual(usual);
  expect(carriedOf(without, 10_000)).toBe(0);
  expect(setStock(without, 10_000, 6).cabling.stock).toEqual(kit.cabling.stock);
});

test('lengths of one’s own stand among them, in order, as long as they are carried', () => {
  const own = setStock(kit, 4000, 2);
  expect(offeredLengths(own)).toEqual([...usual, 4000].toSorted((a, b) => a - b));
  expect(offeredLengths(setStock(own, 4000, 0))).toEqual(usual);
});

test('in feet each can be counted and taken off again', () => {
  const feet = setUnits({ ...kit, cabling: { ...kit.cabling, stock: [] } }, 'in');
  for (const length of offeredLengths(feet)) {
    const one = setStock(feet, length, 3);
    expect(carriedOf(one, length)).toBe(3);
    expect(offeredLengths(one)).toEqual(offeredLengths(feet));
    expect(setStock(one, length, 0).cabling.stock).toEqual([]);
  }
});
