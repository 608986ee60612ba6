import { expect, it } from 'vitest';
import { gap } from '../../src/geometry/plan.ts';
import { boxCorners, inputsInRow, onBox } from '../../src/rig/boxShape.ts';

const box = (inputs: number, turn = 0) => ({ x: 120, y: -40, turn, inputs, tail: 10_000 });

it.each([
  [4, 200],
  [8, 360],
  [9, 240],
  [12, 280],
  [16, 360],
  [24, 520],
])(
  'B1, B2: a box with %i inputs is %i mm wide and 150 mm deep about its place',
  (inputs, width) => {
    const [a, b, c, d] = boxCorners(box(inputs, 33));
    if (!a || !b || !c || !d) throw new Error('four corners were expected');
    expect(gap(a, b)).toBeCloseTo(width, 9);
    expect(gap(b, c)).toBeCloseTo(150, 9);
    expect(gap(c, d)).toBeCloseTo(width, 9);
    expect((a.x + c.x) / 2).toBeCloseTo(120, 9);
    expect((a.y + c.y) / 2).toBeCloseTo(-40, 9);
  },
);

it.each([
  [1, 1],
  [8, 8],
  [9, 5],
  [16, 8],
])('B1: %i inputs stand %i in a row', (inputs, row) => {
  expect(inputsInRow(box(inputs))).toBe(row);
});

it('the right of who looks at inputs that face the audience is the player’s left', () => {
  const spot = onBox(box(8, 90), 75, 100);
  expect(spot.x).toBeCloseTo(20, 9);
  expect(spot.y).toBeCloseTo(35, 9);
});
