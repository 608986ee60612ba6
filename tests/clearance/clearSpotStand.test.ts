import { describe, expect, it } from 'vitest';
import { boxesOf, brokenBounds, familiesOf } from './spotFamilies.ts';

const boxes = boxesOf(familiesOf('stand'), 2);

describe('the spots of a mic on a stand', () => {
  it('no point of any solid gets farther in a box of spots than the room told, nor do tip, aim, base and what the stand falls short', () => {
    expect(boxes.length).toBeGreaterThan(200);
    expect(brokenBounds(boxes)).toEqual([]);
  });

  it('has boxes with and without a boom, mics that turn to their aim and mics that keep their direction', () => {
    const kinds = new Set(
      boxes.map(({ family, leeway }) => `${family.freedoms.length} ${leeway.axis > 0}`),
    );
    expect(kinds).toEqual(new Set(['3 true', '3 false', '4 true', '4 false']));
  });
});
