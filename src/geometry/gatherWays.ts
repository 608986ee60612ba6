import type { Mm } from '../units/quantity.ts';
import { listed } from './listed.ts';
import { settle } from './settleWays.ts';
import type { Tangents } from './tangents.ts';
import { TreeGoals, type TreeLanding } from './treeGoals.ts';
import type { Frame, Vec2 } from './vector.ts';
import { type FoundWay, WaySearch } from './waySearch.ts';
import {
  type Chain,
  type GatherWeights,
  type TreeNode,
  type WayToGather,
  WayTree,
} from './wayTree.ts';

/** How many times all parts of a tree are tried elsewhere, after a first round. */
const MORE_ROUNDS = 2;
/** H1: up to so many ways, each is the first in two orders; up to so many, there are two orders. */
const FEW = 6;
const SOME = 24;
/** A new way must be better by this share, so that rounding never goes in circles. */
const BETTER = 1e-6;

/**
 * Ways that share stretches with each other where that costs less, around the same obstacles. In the order given: the points of
 * each from start to end.
 *
 * H1 The longest way is laid first; each next one on its own shortest way, or joining what lies there already, where that is
 *    best. Other orders are tried as well: the shortest first, and of few ways each of them first. Of many ways, only the order
 *    whose tree is cheapest after one round of H2 goes on to be made better.
 * H2 Then every part of the tree is taken up and laid again where it costs least, and every place where ways come together
 *    moves to where it costs least, as long as anything gets better. What is found is a tree that no single such change
 *    makes better: near the best of all, which nobody knows how to find quickly.
 * H3 In a hurry there is one order, and the places where ways come together move once: a tree that keeps all rules and costs a
 *    fifth of the time.
 */
export function gatherWays<F extends Frame>(
  tangents: Tangents<F>,
  ways: readonly WayToGather<F>[],
  weights: GatherWeights,
  inHurry = false,
): readonly (readonly Vec2<F>[])[] {
  if (ways.length === 0) return [];
  const orders = ordersOf(
    listed(ways, ({ most }) => most),
    inHurry,
  );
  const search: Search<F> = new WaySearch(tangents);
  const trees = listed(orders, (order) => {
    const tree = new WayTree(tangents, ways, weights);
    lay(tree, order, search);
    settle(tree);
    if (!inHurry) improve(tree, 1, search);
    return tree;
  });
  const tried = ways.length > FEW ? [cheapest(trees)] : trees;
  if (!inHurry) for (const tree of tried) improve(tree, MORE_ROUNDS, search);
  const best = cheapest(tried);
  return listed(ways, (_, way) => pointsOf(best, way));
}

type Search<F extends Frame> = WaySearch<F, TreeLanding<F>>;

const cheapest = <F extends Frame>(trees: readonly WayTree<F>[]): WayTree<F> =>
  trees.reduce((p, q) => (q.cost() < p.cost() ? q : p));

/** H1: the places of lengths in the orders in which they are tried. */
function ordersOf(lengths: readonly Mm[], inHurry: boolean): number[][] {
  const far = [...lengths.keys()].sort((i, j) => (lengths[j] ?? 0) - (lengths[i] ?? 0) || i - j);
  if (inHurry || far.length > SOME) return [far];
  const near = far.toReversed();
  const starting = (first: number, order: readonly number[]): number[] => [
    first,
    ...order.filter((place) => place !== first),
  ];
  if (far.length > FEW) return [far, near];
  return far.flatMap((first) => [starting(first, near), starting(first, far)]);
}

function lay<F extends Frame>(tree: WayTree<F>, order: readonly number[], search: Search<F>): void {
  for (const way of order) {
    const entry = tree.ways[way];
    const head = entry && tree.begin(way, entry);
    if (!head) continue;
    // Nothing beats a way's own shortest one before there is another to join.
    const isAlone = tree.nodes.length === 1 || entry.own.length < 2;
    const found = isAlone ? undefined : better(tree, tree.ownChain(head, entry), search);
    if (found) land(tree, head, found);
    else tree.attach(head, entry.own, undefined);
  }
}

/** H2 */
function improve<F extends Frame>(tree: WayTree<F>, rounds: number, search: Search<F>): void {
  // What was tried in vain is not tried again before anything has changed.
  const triedAt = new Map<TreeNode<F>, number>();
  for (let round = 0; round < rounds; round += 1) {
    const before = tree.changes;
    for (const node of [...tree.nodes]) {
      if (!isHead(node) || triedAt.get(node) === tree.changes) continue;
      if (!relay(tree, node, search)) triedAt.set(node, tree.changes);
    }
    if (tree.changes === before) return;
    settle(tree);
  }
}

/** Ways begin or come together here: what goes on from here is a part of its own. */
const isHead = <F extends Frame>({ up, starts, down }: TreeNode<F>): boolean =>
  up !== undefined && (starts.length > 0 || down.length > 1);

/** H2: lays the part from a node up elsewhere, if it costs less there. */
function relay<F extends Frame>(tree: WayTree<F>, head: TreeNode<F>, search: Search<F>): boolean {
  const chain = tree.chainFrom(head);
  const found = better(tree, chain, search);
  if (!found) return false;
  land(tree, head, found, chain);
  return true;
}

type Found<F extends Frame> = FoundWay<F, TreeLanding<F>>;

/** Where a part of a tree would cost less. */
function better<F extends Frame>(
  tree: WayTree<F>,
  chain: Chain<F>,
  search: Search<F>,
): Found<F> | undefined {
  const { head } = chain;
  const below = (chain.cost / tree.perMm(head.ways.length)) * (1 - BETTER);
  const goals = new TreeGoals(tree, chain, below);
  if (goals.areNone) return undefined;
  return search.run(head.place, goals, below);
}

/** Lays what begins at a head where it was found to cost less, instead of the chain where it lies already. */
function land<F extends Frame>(
  tree: WayTree<F>,
  head: TreeNode<F>,
  { places, landing: { node, splits } }: Found<F>,
  instead?: Chain<F>,
): void {
  const place = places.at(-1);
  const top = splits && node && place ? tree.split(node, place) : node;
  if (instead) tree.detach(instead);
  tree.attach(head, places, top);
}

function pointsOf<F extends Frame>(tree: WayTree<F>, way: number): readonly Vec2<F>[] {
  const points: Vec2<F>[] = [];
  let node = tree.startOf.get(way);
  for (; node; node = node.up) {
    points.push(node.place.point);
    if (!node.up)
      for (const { point } of tree.row.between(node.place, way, node.ways)) points.push(point);
  }
  return points;
}
