import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { setDeck } from '../../../../src/layout/edit/stage.ts';
import type { Layout } from '../../../../src/layout/layout.ts';
import { formOf, readForm } from '../../../../src/views/pages/nextVenue/venueForm.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;

test('a form that nobody touched keeps deck, air and stock exactly, in inches too', () => {
  for (const units of ['mm', 'in'] as const) {
    const layout = { ...setDeck(kit, { width: 2437.3 }), units };
    const reading = readForm(formOf(layout), layout, 'next');
    const { width, depth, height, stairs } = layout.deck;
    expect(reading).toMatchObject({
      ok: true,
      next: {
        id: 'next',
        name: kit.name,
        deck: { width, depth, height, stairs },
        boxEdge: null,
        stock: kit.cabling.stock,
        venue: { temperature: kit.venue.temperature, humidity: kit.venue.humidity },
      },
    });
  }
});

test('numbers are read with their units, and cables that are not carried leave the list', () => {
  const form = formOf(kit);
  const typed = {
    ...form,
    numbers: { ...form.numbers, width: '3 m', depth: '8 ft', temperature: '4,5' },
    stock: { ...form.stock, '2000': '0', '5000': '7' },
  };
  const reading = readForm(typed, kit, 'next');
  if (!reading.ok) throw new Error('it can be read');
  expect(reading.next.deck).toMatchObject({ width: 3000, depth: 2438.4 });
  expect(reading.next.venue.temperature).toBe(4.5);
  expect(reading.next.stock.map(({ length }) => length)).not.toContain(2000);
  expect(reading.next.stock).toContainEqual({ length: 5000, count: 7 });
});

test('everything that can’t be used is named at its field', () => {
  const form = formOf(kit);
  const reading = readForm(
    {
      ...form,
      name: '  ',
      numbers: { ...form.numbers, width: 'wide', humidity: '140' },
      stock: { ...form.stock, '2000': '1.5' },
    },
    kit,
    'next',
  );
  if (reading.ok) throw new Error('it can’t be read');
  expect(Object.keys(reading.problems).toSorted()).toEqual([
    'humidity',
    'name',
    'stock:2000',
    'width',
  ]);
});

test('a name over 80 characters is refused, not cut off', () => {
  const long = 'n'.repeat(81);
  const reading = readForm({ ...formOf(kit), name: long, venueName: ` ${long} ` }, kit, 'next');
  const said = 'At most 80 characters; this has 81.';
  expect(reading).toEqual({ ok: false, problems: { name: said, venueName: said } });
  const most = 'n'.repeat(80);
  const kept = readForm({ ...formOf(kit), name: most, venueName: most }, kit, 'next');
  expect(kept).toMatchObject({ ok: true, next: { name: most, venue: { name: most } } });
});
