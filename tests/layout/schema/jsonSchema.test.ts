import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { layoutJsonSchema } from '../../../src/layout/schema/jsonSchema.ts';

const served: unknown = JSON.parse(readFileSync('public/layout.schema.json', 'utf8'));

test('the served JSON Schema is the one made from the validator', () => {
  expect(served).toEqual(JSON.parse(JSON.stringify(layoutJsonSchema())));
});

test('it refuses unknown fields at every level', () => {
  const open: string[] = [];
  const visit = (node: unknown, path: string): void => {
    if (typeof node !== 'object' || node === null) return;
    if (Reflect.get(node, 'properties') && Reflect.get(node, 'additionalProperties') !== false) {
      open.push(path);
    }
    for (const [key, inner] of Object.entries(node)) visit(inner, `${path}/${key}`);
  };
  visit(served, '');
  expect(open).toEqual([]);
});

test('it says what the parts mean', () => {
  expect(JSON.stringify(served).match(/"description":/g)?.length).toBeGreaterThan(100);
});
