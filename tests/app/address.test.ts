import { expect, it } from 'vitest';
import { placeAddress, placeAt } from '../../src/app/address.ts';
import { PAGE_NAMES } from '../../src/session/pages.ts';
import { newLayoutId } from '../../src/storage/ids.ts';

it.each([null, ...PAGE_NAMES])(
  'an address opens the layout that it was made for, page %s',
  (page) => {
    const place = { layout: newLayoutId(), page };
    expect(placeAt(placeAddress(place))).toEqual(place);
    expect(placeAt(`${placeAddress(place)}/`)).toEqual(place);
  },
);

it.each([
  '/',
  '',
  '/layout',
  '/layout/',
  '/layout/A b',
  '/layout/%3Cb%3E',
  '/layouts/one',
  '/layout/one/two',
  '/layout/one/hand-over/two',
  '/layout/-x',
])('%s opens the list', (path) => {
  expect(placeAt(path)).toBeNull();
});
