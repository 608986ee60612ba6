import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gap } from '../../src/geometry/plan.ts';
import { Tangents } from '../../src/geometry/tangents.ts';
import { type GatherWeights, type TreeNode, WayTree } from '../../src/geometry/wayTree.ts';
import { planPoint } from './planScenes.ts';

const weights: fc.Arbitrary<GatherWeights> = fc.constantFrom(
  { each: 0.5, once: 0.5 },
  { each: 0.8, once: 0.2 },
  { each: 0.3, once: 0.7 },
);

/** A way's start, its end's place in a row on the x axis, and which of the ways before it joins, at what share of its first stretch. */
const joining = fc.record({
  start: planPoint,
  end: fc.integer({ min: -3, max: 3 }),
  other: fc.nat(),
  share: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
  joins: fc.boolean(),
});
type Joining = typeof joining extends fc.Arbitrary<infer T> ? T : never;

/** A tree on an empty floor; every way of it joins another where it is told to, and else goes to its own end. */
function treeOf(ways: readonly Joining[], by: GatherWeights): WayTree<'kit'> {
  const tangents = new Tangents<'kit'>([], undefined);
  const ends = [-3, -2, -1, 0, 1, 2, 3].map((x) => tangents.place({ x, y: 0 }));
  const given = ways.map(({ start, end }) => ({
    own: [tangents.place(start), ends[end + 3] ?? tangents.place(start)],
    most: 1000,
  }));
  const tree = new WayTree(tangents, given, by);
  for (const [way, { other, share, joins }] of ways.entries()) {
    const own = given[way];
    const head = own && tree.lay(way, own);
    const joined = way > 0 && joins ? tree.startOf.get(other % way) : undefined;
    if (!head || !joined?.up) continue;
    const { point } = joined.place;
    const to = joined.up.place.point;
    const between = {
      x: point.x + share * (to.x - point.x),
      y: point.y + share * (to.y - point.y),
    };
    const top = tree.split(joined, tangents.place(between));
    tree.detach(tree.chainFrom(head));
    tree.attach(head, [head.place, top.place], top);
  }
  return tree;
}

/** From where a way begins up to its root. */
function nodesOf(tree: WayTree<'kit'>, way: number): readonly TreeNode<'kit'>[] {
  const nodes: TreeNode<'kit'>[] = [];
  for (let node = tree.startOf.get(way); node; node = node.up) nodes.push(node);
  return nodes;
}

const stretches = (nodes: readonly TreeNode<'kit'>[]) =>
  nodes.slice(0, -1).map((node, i) => ({
    node,
    length: gap(node.place.point, nodes[i + 1]?.place.point ?? node.place.point),
  }));

describe('ways in a tree', () => {
  it('B1: lead from their starts up to a root, and from there straight to their ends, past those that lie between', () => {
    fc.assert(
      fc.property(fc.array(joining, { minLength: 1, maxLength: 6 }), weights, (ways, by) => {
        const tree = treeOf(ways, by);
        for (const [way, { start, end }] of ways.entries()) {
          const nodes = nodesOf(tree, way);
          const root = nodes.at(-1);
          if (!root) throw new Error('a root was expected');
          expect(nodes[0]?.place.point).toEqual(start);
          expect(nodes.every(({ ways: passing }) => passing.includes(way))).toBe(true);
          const beyond = tree.row.between(root.place, way, root.ways).map(({ point }) => point);
          const all = [root.place.point, ...beyond];
          expect(all.at(-1)).toEqual({ x: end, y: 0 });
          const between = ways.filter(
            (other, k) =>
              root.ways.includes(k) && (other.end - root.place.point.x) * (other.end - end) < 0,
          );
          expect(new Set(beyond.slice(0, -1).map(({ x }) => x))).toEqual(
            new Set(between.map((other) => other.end)),
          );
          const length = all.reduce((sum, p, i) => sum + gap(all[i - 1] ?? p, p), 0);
          expect(length).toBeCloseTo(gap(root.place.point, { x: end, y: 0 }), 9);
        }
      }),
    );
  });

  it('B2: cost each stretch once, each way all of its own, and the row of ends from the roots on', () => {
    fc.assert(
      fc.property(fc.array(joining, { minLength: 1, maxLength: 6 }), weights, (ways, by) => {
        const tree = treeOf(ways, by);
        const laid = new Map<TreeNode<'kit'>, number>();
        const ends = new Map<TreeNode<'kit'>, number[]>();
        let each = 0;
        for (const [way, { end }] of ways.entries()) {
          const nodes = nodesOf(tree, way);
          const root = nodes.at(-1);
          if (!root) throw new Error('a root was expected');
          for (const { node, length } of stretches(nodes)) {
            laid.set(node, length);
            each += length;
          }
          each += Math.abs(end - root.place.point.x);
          ends.set(root, [...(ends.get(root) ?? [root.place.point.x]), end]);
        }
        let once = 0;
        for (const length of laid.values()) once += length;
        for (const row of ends.values()) once += Math.max(...row) - Math.min(...row);
        expect(tree.cost()).toBeCloseTo(by.each * each + by.once * once, 9);
      }),
    );
  });

  it('B1, B2: after every kind of change know the lengths, root and ways of every node', () => {
    const change = fc.record({ node: fc.nat(), to: planPoint, straighten: fc.boolean() });
    fc.assert(
      fc.property(
        fc.array(joining, { minLength: 1, maxLength: 6 }),
        weights,
        fc.array(change, { maxLength: 6 }),
        (ways, by, changes) => {
          const tree = treeOf(ways, by);
          expectMeasured(tree);
          for (const { node: which, to, straighten } of changes) {
            const inner = [...tree.nodes].filter(({ up, starts }) => up && starts.length === 0);
            const node = inner[which % inner.length];
            if (!node) continue;
            if (straighten && node.down.length === 1) tree.straighten(node);
            else tree.move(node, tree.tangents.place(to));
            expectMeasured(tree);
          }
        },
      ),
    );
  });
});

/** Everything that a tree keeps of its nodes is what the links between them say. */
function expectMeasured(tree: WayTree<'kit'>): void {
  const waysBelow = ({ starts, down }: TreeNode<'kit'>): number[] => [
    ...starts,
    ...down.flatMap(waysBelow),
  ];
  for (const node of tree.nodes) {
    const above: TreeNode<'kit'>[] = [];
    for (let next: typeof node | undefined = node; next; next = next.up) above.push(next);
    const lengths = stretches(above).map(({ length }) => length);
    const toRoot = lengths.reduceRight((sum, length) => sum + length, 0);
    expect(node.toRoot).toBe(toRoot);
    expect(node.length).toBe(lengths[0] ?? 0);
    expect(node.root).toBe(above.at(-1));
    expect(node.ways).toEqual(waysBelow(node));
    const { x, y } = node.place.point;
    const end = { x: x + node.length * node.alongX, y: y + node.length * node.alongY };
    expect(gap(end, node.up?.place.point ?? end)).toBeLessThan(1e-9);
  }
}
