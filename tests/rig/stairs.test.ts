import { expect, it } from 'vitest';
import type { Stairs } from '../../src/layout/deck.ts';
import { stairsMiddle, stairsOutward } from '../../src/rig/stairs.ts';

const deck = { width: 4000, depth: 3000 };
const edges: readonly Stairs['edge'][] = ['front', 'back', 'left', 'right'];

it.each(edges)('D3: stairs at the %s meet the deck on its edge, and lead away from it', (edge) => {
  const middle = stairsMiddle({ edge, offset: 250, width: 900 }, deck);
  const out = stairsOutward[edge];
  const onEdge = edge === 'front' || edge === 'back' ? deck.depth / 2 : deck.width / 2;
  expect(middle.x * out.x + middle.y * out.y).toBe(onEdge);
  // Along the edge they stand where their offset says: toward the player's right, or toward the audience.
  expect(out.x === 0 ? middle.x : middle.y).toBe(250);
});
