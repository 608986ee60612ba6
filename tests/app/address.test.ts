import { expect, it } from 'vitest';
import { layoutAddress, layoutAt } from '../../src/app/address.ts';
import { newLayoutId } from '../../src/storage/ids.ts';

it('an address opens the layout that it was made for', () => {
  const id = newLayoutId();
  expect(layoutAt(layoutAddress(id))).toBe(id);
  expect(layoutAt(`${layoutAddress(id)}/`)).toBe(id);
});

it.each([
  '/',
  '',
  '/layout',
  '/layout/',
  '/layout/A b',
  '/layout/%3Cb%3E',
  '/layouts/one',
  '/layout/one/two',
  '/layout/-x',
])('%s opens the list', (path) => {
  expect(layoutAt(path)).toBeNull();
});
