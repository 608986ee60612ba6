import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  COARSEST,
  quarters,
  type Square,
  SquareGrid,
  TOP,
} from '../../src/clearance/squareGrid.ts';

const [COLUMNS, ROWS] = [3, 2];
const square: fc.Arbitrary<Square> = fc.integer({ min: 0, max: TOP }).chain((level) =>
  fc.record({
    level: fc.constant(level),
    column: fc.integer({ min: 0, max: (COLUMNS * COARSEST) / 2 ** level - 1 }),
    row: fc.integer({ min: 0, max: (ROWS * COARSEST) / 2 ** level - 1 }),
  }),
);

/** Whether a cell lies in a square. */
const holds = ({ level, column, row }: Square, x: number, y: number): boolean =>
  Math.floor(x / 2 ** level) === column && Math.floor(y / 2 ** level) === row;

describe('a grid of squares', () => {
  it('has exactly the cells of the squares that were marked, and knows which squares are full', () => {
    fc.assert(
      fc.property(fc.array(square, { maxLength: 12 }), square, (marked, asked) => {
        const grid = new SquareGrid(COLUMNS, ROWS);
        for (const each of marked) grid.mark(each);
        const across = grid.across(0);
        const isIn = (i: number): boolean =>
          marked.some((each) => holds(each, i % across, Math.floor(i / across)));
        const cells = [...grid.cells()];
        expect(cells).toEqual(cells.map((_, i) => (isIn(i) ? 1 : 0)));
        const own = cells.filter((_, i) => holds(asked, i % across, Math.floor(i / across)));
        expect(grid.isFull(asked)).toBe(own.every((cell) => cell === 1));
      }),
      { numRuns: 60 },
    );
  });

  it('a square is full once its four quarters are', () => {
    const whole = { level: 2, column: 1, row: 1 };
    const grid = new SquareGrid(COLUMNS, ROWS);
    for (const [k, quarter] of quarters(whole).entries()) {
      expect(grid.isFull(whole), `${k} quarters`).toBe(false);
      grid.mark(quarter);
    }
    expect(grid.isFull(whole)).toBe(true);
  });
});
