import { expect, it } from 'vitest';
import { idField } from '../../src/layout/fields.ts';
import { newLayoutId } from '../../src/storage/ids.ts';

it('newLayoutId gives a valid id that was not given before', () => {
  const ids = Array.from({ length: 1000 }, newLayoutId);
  for (const id of ids) expect(idField.safeParse(id).success).toBe(true);
  expect(new Set(ids).size).toBe(ids.length);
});
