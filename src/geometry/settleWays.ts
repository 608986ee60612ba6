import type { Mm } from '../units/quantity.ts';
import { gap } from './plan.ts';
import type { Place } from './tangents.ts';
import type { Frame, Vec2 } from './vector.ts';
import type { TreeNode, WayTree } from './wayTree.ts';

/** A move must save this much of what it changes. */
const WORTH = 1e-5;
/** Steps toward the best place, and how often a place that can't be taken is halved back. */
const STEPS = 24;
const HALVINGS = 4;
/** Nearer than this to a neighbour a place pulls no further, mm. */
const AT_NEIGHBOUR: Mm = 1e-3;

/**
 * Straightens bends that are no longer needed, and moves places where ways come together to where the stretches to them cost
 * least. True when anything changed.
 *
 * J1 A place pulls toward each neighbour with what a mm of that stretch costs; at rest the pulls balance (the weighted form of
 *    Fermat's point; found by Weiszfeld's steps). Where that can't be reached without an obstacle in between, or a way would become
 *    longer than it may, it goes as far toward it as it can, by halves.
 */
export function settle<F extends Frame>(tree: WayTree<F>): boolean {
  let changed = false;
  for (const node of [...tree.nodes]) {
    if (!node.up || node.starts.length > 0) continue;
    const did = node.down.length === 1 ? straighten(tree, node) : settleJunction(tree, node);
    changed = changed || did;
  }
  return changed;
}

function straighten<F extends Frame>(tree: WayTree<F>, node: TreeNode<F>): boolean {
  const below = node.down[0];
  if (!below || !node.up) return false;
  if (tree.tangents.blockers(below.place, node.up.place).length > 0) return false;
  tree.straighten(node);
  return true;
}

/** A neighbour of a place, and what a mm to it costs. */
interface Pull<F extends Frame> {
  readonly place: Place<F>;
  readonly weight: number;
}

function settleJunction<F extends Frame>(tree: WayTree<F>, node: TreeNode<F>): boolean {
  const above = node.up;
  if (!above) return false;
  const pulls: Pull<F>[] = [{ place: above.place, weight: tree.perMm(node.ways.length) }];
  for (const { place, ways } of node.down) pulls.push({ place, weight: tree.perMm(ways.length) });
  const here = node.place.point;
  const best = balance(here, pulls);
  const now = costAt(here, pulls);
  if (now - costAt(best, pulls) < WORTH * now) return false;
  for (let share = 1, halving = 0; halving < HALVINGS; share /= 2, halving += 1) {
    const at = { x: here.x + share * (best.x - here.x), y: here.y + share * (best.y - here.y) };
    const place = tree.tangents.place(at);
    const isFree = pulls.every((pull) => tree.tangents.blockers(pull.place, place).length === 0);
    if (!isFree || !staysShort(tree, node, at)) continue;
    tree.move(node, place);
    return true;
  }
  return false;
}

function costAt<F extends Frame>(at: Vec2<F>, pulls: readonly Pull<F>[]): number {
  let cost = 0;
  for (const { place, weight } of pulls) cost += weight * gap(at, place.point);
  return cost;
}

/** J1 */
function balance<F extends Frame>(from: Vec2<F>, pulls: readonly Pull<F>[]): Vec2<F> {
  let { x, y } = from;
  for (let step = 0; step < STEPS; step += 1) {
    let sumX = 0;
    let sumY = 0;
    let weights = 0;
    for (const { place, weight } of pulls) {
      const { point } = place;
      const dx = x - point.x;
      const dy = y - point.y;
      const pull = weight / Math.max(AT_NEIGHBOUR, Math.sqrt(dx * dx + dy * dy));
      sumX += pull * point.x;
      sumY += pull * point.y;
      weights += pull;
    }
    x = sumX / weights;
    y = sumY / weights;
  }
  return { x, y };
}

/** B3 after a move. */
function staysShort<F extends Frame>(tree: WayTree<F>, node: TreeNode<F>, at: Vec2<F>): boolean {
  const { up, place } = node;
  if (!up) return false;
  const more = gap(at, up.place.point) - gap(place.point, up.place.point);
  return node.down.every((below) => {
    const longer = more + gap(at, below.place.point) - below.length;
    if (longer <= 0) return true;
    return below.ways.every((way) => {
      const now = (tree.startOf.get(way)?.toRoot ?? 0) + tree.row.fan(node.root.place, way);
      return now + longer <= (tree.ways[way]?.most ?? 0);
    });
  });
}
