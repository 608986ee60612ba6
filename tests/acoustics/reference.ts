import { readFileSync } from 'node:fs';

/** One published or independently computed value; `source` says from where. */
export interface Reference {
  readonly id: string;
  readonly value: number;
  readonly tol: number;
  readonly source: string;
}

interface Entry extends Omit<Reference, 'value'> {
  readonly value: unknown;
}

const path = new URL('../fixtures/reference/values.json', import.meta.url);
const entries: readonly Entry[] = JSON.parse(readFileSync(path, 'utf8'));

/** All single values whose id starts with a prefix, with infinities as numbers. Throws where there is none, so that no test runs empty. */
export function references(prefix: string): readonly Reference[] {
  const found = entries.filter(({ id, value }) => id.startsWith(prefix) && !Array.isArray(value));
  if (found.length === 0) throw new RangeError(`No reference value starts with ${prefix}`);
  return found.map((entry) => ({ ...entry, value: numberOf(entry) }));
}

function numberOf({ id, value }: Entry): number {
  if (value === 'inf') return Number.POSITIVE_INFINITY;
  if (value === '-inf') return Number.NEGATIVE_INFINITY;
  if (typeof value === 'number') return value;
  throw new TypeError(`${id}: expected a number, not ${JSON.stringify(value)}`);
}

/** A value made of several numbers. */
export function referenceList(id: string): readonly number[] {
  const value = entries.find((entry) => entry.id === id)?.value;
  if (!Array.isArray(value)) throw new RangeError(`No reference list ${id}`);
  return value.map(Number);
}

/** Whether a computed value agrees with a published one within its own tolerance; infinities must be equal. */
export const agrees = (computed: number, { value, tol }: Reference): boolean =>
  computed === value || Math.abs(computed - value) <= tol * (1 + 1e-9);
