import { describe, expect, it } from 'vitest';
import { boxesOf, brokenBounds, familiesOf } from './spotFamilies.ts';

const boxes = boxesOf(familiesOf('clip'), 1);

describe('the spots of a clip', () => {
  it('no point of any solid gets farther in a box of spots than the room told, nor do tip and aim', () => {
    expect(boxes.length).toBeGreaterThan(200);
    expect(brokenBounds(boxes)).toEqual([]);
  });

  it('the room told is of the order of what is needed: a box of no size has none, and in narrow ones some point uses a third of it', () => {
    const narrow = boxes.filter(({ leeway }) => leeway.tip > 1 && leeway.tip < 40);
    expect(narrow.length).toBeGreaterThan(20);
    const used = narrow.map(({ spot, leeway, others }) => {
      const most = Math.max(...(leeway.rooms[0] ?? []));
      const moved = others.map(({ spot: other }) =>
        Math.hypot(other.tip.x - spot.tip.x, other.tip.y - spot.tip.y, other.tip.z - spot.tip.z),
      );
      return Math.max(...moved) / most;
    });
    expect(used.toSorted((a, b) => a - b)[Math.floor(used.length / 2)]).toBeGreaterThan(1 / 3);
    for (const { family, spot, halves } of boxes.slice(0, 20)) {
      const still = family.leewayOf(
        spot,
        halves.map(() => 0),
      );
      expect(Math.max(...still.rooms.flat(), still.tip, still.axis)).toBe(0);
    }
  });
});
