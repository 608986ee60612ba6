import { expect, it } from 'vitest';
import { capsuleInTheWay, liftedDrum } from '../../../src/cabling/swap/liftedDrum.ts';
import type { Capsule } from '../../../src/geometry/capsule.ts';
import { vec } from '../../../src/geometry/vector.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { isDrum } from '../../../src/layout/pieces/piece.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';

const layout = largeKit('kit');
const [found] = layout.pieces.filter(isDrum).filter(({ support }) => support.kind !== 'legs');
if (!found) throw new Error('expected a drum that stands on no legs of its own');
const drum = { ...found, tilt: 0 };
const pieces = layout.pieces.map((piece) => (piece.id === drum.id ? drum : piece));
const placed = buildRig({ ...layout, pieces }).pieces.find(({ piece }) => piece.id === drum.id);
const [shell] = placed?.shells ?? [];
const lifted = placed && liftedDrum(placed, drum);

it('X2: 10 mm round it and over it must be free, and nothing under it', () => {
  if (!shell || !lifted) throw new Error('expected a shell');
  const { centre, radius, halfHeight } = shell;
  const half = halfHeight + drum.rim.height;
  const outside = radius + drum.rim.width;
  /** A thin rod across, its nearest point so far beside the hoop, over where the lift ends, or under where it begins. */
  const rod = (beside: number, up: number): Capsule => {
    const x = centre.x + beside;
    return { a: vec(x, centre.y - 50, up), b: vec(x, centre.y + 50, up), radius: 0 };
  };
  const isMet = (capsule: Capsule): boolean => capsuleInTheWay(lifted, capsule) !== undefined;
  expect(isMet(rod(outside + 9.9, centre.z))).toBe(true);
  expect(isMet(rod(outside + 10.1, centre.z))).toBe(false);
  const [top, bottom] = [centre.z + half + lifted.rise, centre.z - half];
  expect(isMet(rod(0, top + 9.9))).toBe(true);
  expect(isMet(rod(0, top + 10.1))).toBe(false);
  expect(isMet(rod(0, bottom + 0.1))).toBe(true);
  expect(isMet(rod(0, bottom - 0.1))).toBe(false);
});
