import type { Frame, Vec2 } from './vector.ts';

/** Numbers places in the order in which they are first asked for, from 0 on: the same for the same coordinates. */
export function createPlaceNumbers<F extends Frame>(): (place: Vec2<F>) => number {
  const columns = new Map<number, Map<number, number>>();
  let count = 0;
  return ({ x, y }) => {
    let column = columns.get(x);
    if (!column) {
      column = new Map();
      columns.set(x, column);
    }
    const known = column.get(y);
    if (known !== undefined) return known;
    column.set(y, count);
    count += 1;
    return count - 1;
  };
}
