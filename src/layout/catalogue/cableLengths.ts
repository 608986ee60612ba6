import { MM_PER_FOOT } from '../../units/inch.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Layout } from '../layout.ts';

/** Lengths in which mic cables are usually carried (common practice, from memory). */
const USUAL: Readonly<Record<Layout['units'], readonly Mm[]>> = {
  mm: [2000, 3000, 5000, 7500, 10_000, 15_000],
  in: [5, 10, 15, 25, 50].map((feet) => Math.round(feet * MM_PER_FOOT)),
};

/** The lengths that a count is asked of, shortest first: every usual one, carried or not, and every other one that is on the list. */
export const offeredLengths = ({
  units,
  cabling,
}: Pick<Layout, 'units' | 'cabling'>): readonly Mm[] =>
  [...new Set([...USUAL[units], ...cabling.stock.map(({ length }) => length)])].toSorted(
    (a, b) => a - b,
  );

/** How many cables of a length are carried. */
export const carriedOf = ({ cabling }: Pick<Layout, 'cabling'>, length: Mm): number =>
  cabling.stock.find((row) => row.length === length)?.count ?? 0;
