import type { Mm } from '../units/quantity.ts';
import { gap } from './plan.ts';
import type { Place, Tangents } from './tangents.ts';
import type { Frame } from './vector.ts';

/** A way to be gathered with others. */
export interface WayToGather<F extends Frame = 'kit'> {
  /** Its own shortest way from start to end, over places of the same {@link Tangents}; an end shared with other ways is one place. */
  readonly own: readonly Place<F>[];
  /** How long it may become, mm. */
  readonly most: Mm;
}

/** What each mm costs: of every way, and of every stretch once however many ways share it. */
export interface GatherWeights {
  readonly each: number;
  readonly once: number;
}

/** A place of the tree: ways come from below and go on up. */
export class TreeNode<F extends Frame> {
  place: Place<F>;
  /** Undefined for a root, where the ways part for their ends. */
  up: TreeNode<F> | undefined = undefined;
  readonly down = new Set<TreeNode<F>>();
  /** Ways that begin here, and all that pass here. */
  readonly starts: number[] = [];
  ways: readonly number[] = [];
  /** Length of the stretch up, and of all up to the root. */
  length: Mm = 0;
  toRoot: Mm = 0;
  root: TreeNode<F>;

  constructor(place: Place<F>) {
    this.place = place;
    this.root = this;
  }
}

/** Part of a tree that could be laid elsewhere: from a node up to where other ways join. */
export interface Chain<F extends Frame> {
  readonly head: TreeNode<F>;
  /** The nodes above the head that only its ways use. */
  readonly between: ReadonlySet<TreeNode<F>>;
  /** Where other ways join; undefined where the root is the chain's own. */
  readonly top: TreeNode<F> | undefined;
  readonly cost: number;
}

/**
 * Ways that share stretches on their way to ends that lie side by side, as a forest.
 *
 * B1 Each way runs from its start up to a root and from there straight to its end, past the ends that lie between.
 * B2 A tree costs, for every stretch with k ways, its length times `once` + k `each`; at a root each way costs its distance to
 *    its end times `each`, and the row from the first to the last of root and ends its length times `once`.
 * B3 No way becomes longer than it may.
 */
export class WayTree<F extends Frame> {
  readonly tangents: Tangents<F>;
  readonly ways: readonly WayToGather<F>[];
  readonly weights: GatherWeights;
  readonly nodes = new Set<TreeNode<F>>();
  readonly startOf = new Map<number, TreeNode<F>>();
  readonly #row: Row<F>;
  readonly #fans = new Map<Place<F>, Map<number, Mm>>();

  constructor(tangents: Tangents<F>, ways: readonly WayToGather<F>[], weights: GatherWeights) {
    this.tangents = tangents;
    this.ways = ways;
    this.weights = weights;
    this.#row = new Row(ways.flatMap(({ own }) => own.at(-1) ?? []));
  }

  /** What one mm costs that `count` ways share. */
  perMm(count: number): number {
    return this.weights.once + count * this.weights.each;
  }

  /** What the whole tree costs (B2). */
  cost(): number {
    let cost = 0;
    for (const { up, length, ways, place } of this.nodes) {
      cost += up ? length * this.perMm(ways.length) : this.rootCost(place, ways);
    }
    return cost;
  }

  endOf(way: number): Place<F> | undefined {
    return this.ways[way]?.own.at(-1);
  }

  /** From a root straight to a way's end; infinite where something stands between. */
  fan(root: Place<F>, way: number): Mm {
    const known = this.#fans.get(root) ?? new Map<number, Mm>();
    this.#fans.set(root, known);
    const found = known.get(way);
    if (found !== undefined) return found;
    const end = this.endOf(way) ?? root;
    const isFree = end === root || this.tangents.blockers(root, end).length === 0;
    const length = isFree ? gap(root.point, end.point) : Number.POSITIVE_INFINITY;
    known.set(way, length);
    return length;
  }

  /** What the ways cost from a root on (B2). */
  rootCost(root: Place<F>, ways: readonly number[]): number {
    if (ways.length === 0) return 0;
    const fans = ways.reduce((sum, way) => sum + this.fan(root, way), 0);
    return this.weights.each * fans + this.weights.once * this.#row.extent(root, ways);
  }

  /** The places of a way from a root to its end (B1): past the ends of other ways from that root. */
  rowTo(root: TreeNode<F>, way: number): readonly Place<F>[] {
    return this.#row.between(root.place, way, root.ways);
  }

  /** Lays ways that come together at `head` over places that begin there, to a landing on the tree or at a new root. */
  attach(head: TreeNode<F>, places: readonly Place<F>[], landing: TreeNode<F> | undefined): void {
    let last = head;
    const own = landing ? places.slice(1, -1) : places.slice(1);
    for (const place of own) {
      const node = this.#add(place);
      link(last, node);
      last = node;
    }
    if (landing) link(last, landing);
    this.#refresh();
  }

  /** Lays a way on its own shortest way; the node where it begins. */
  lay(way: number, { own: [start, ...places] }: WayToGather<F>): TreeNode<F> | undefined {
    if (!start) return undefined;
    const node = this.#add(start);
    node.starts.push(way);
    this.startOf.set(way, node);
    this.attach(node, [start, ...places], undefined);
    return node;
  }

  /** A new node on the stretch up from a node. */
  split(node: TreeNode<F>, place: Place<F>): TreeNode<F> {
    const { up } = node;
    const middle = this.#add(place);
    if (up) {
      unlink(node);
      link(middle, up);
    }
    link(node, middle);
    return middle;
  }

  /** Takes the nodes of a chain above its head out. */
  detach({ head, between }: Chain<F>): void {
    unlink(head);
    for (const node of between) {
      unlink(node);
      this.nodes.delete(node);
    }
  }

  /** Takes out a node with one node below: the stretches over it become one. */
  straighten(node: TreeNode<F>): void {
    const { up } = node;
    const [below] = node.down;
    if (!up || !below) return;
    unlink(below);
    unlink(node);
    this.nodes.delete(node);
    link(below, up);
    this.#refresh();
  }

  move(node: TreeNode<F>, place: Place<F>): void {
    node.place = place;
    this.#refresh();
  }

  /** What goes from a node up could be laid elsewhere; what it costs now. */
  chainFrom(head: TreeNode<F>): Chain<F> {
    const between = new Set<TreeNode<F>>();
    let length = head.length;
    let next = head.up;
    while (next && next.down.size === 1 && next.starts.length === 0) {
      between.add(next);
      length += next.length;
      next = next.up;
    }
    const { ways, root } = head;
    const own = this.perMm(ways.length) * length;
    if (!next)
      return { head, between, top: undefined, cost: own + this.rootCost(root.place, ways) };
    const shared = this.weights.each * ways.length * next.toRoot;
    return { head, between, top: next, cost: own + shared + this.rootShare(root, ways, ways) };
  }

  /** What ways add to a root's cost, which the ways in `without` have left. */
  rootShare(root: TreeNode<F>, ways: readonly number[], without: readonly number[]): number {
    const others = root.ways.filter((way) => !without.includes(way));
    const together = this.rootCost(root.place, [...others, ...ways]);
    return together - this.rootCost(root.place, others);
  }

  #add(place: Place<F>): TreeNode<F> {
    const node = new TreeNode(place);
    this.nodes.add(node);
    return node;
  }

  /** Ways, lengths and roots of all nodes, from the roots down. */
  #refresh(): void {
    for (const node of this.nodes) {
      if (!node.up) this.#refreshFrom(node, node, 0);
    }
  }

  #refreshFrom(node: TreeNode<F>, root: TreeNode<F>, above: Mm): void {
    node.root = root;
    node.length = node.up ? gap(node.place.point, node.up.place.point) : 0;
    node.toRoot = above + node.length;
    const ways = [...node.starts];
    for (const below of node.down) {
      this.#refreshFrom(below, root, node.toRoot);
      ways.push(...below.ways);
    }
    node.ways = ways;
  }
}

function link<F extends Frame>(below: TreeNode<F>, above: TreeNode<F>): void {
  below.up = above;
  above.down.add(below);
}

function unlink<F extends Frame>(node: TreeNode<F>): void {
  node.up?.down.delete(node);
  node.up = undefined;
}

/** Ends side by side on a line: where along it they lie. */
class Row<F extends Frame> {
  readonly #ends: readonly Place<F>[];
  readonly #along: (place: Place<F>) => number;

  constructor(ends: readonly Place<F>[]) {
    this.#ends = ends;
    const first = ends[0]?.point;
    const last = ends.reduce(
      (best, { point }) => (first && gap(first, point) > gap(first, best) ? point : best),
      first ?? { x: 0, y: 0 },
    );
    const size = first ? gap(first, last) : 0;
    this.#along = ({ point }) =>
      first && size > 0
        ? ((point.x - first.x) * (last.x - first.x) + (point.y - first.y) * (last.y - first.y)) /
          size
        : 0;
  }

  /** How much of the row lies between the first and the last of a root and the ends of some ways. */
  extent(root: Place<F>, ways: readonly number[]): Mm {
    let low = this.#along(root);
    let high = low;
    for (const way of ways) {
      const end = this.#ends[way];
      if (!end) continue;
      const at = this.#along(end);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    return high - low;
  }

  /** The places from a root to the end of a way: past the ends of other ways that lie between, in order. */
  between(root: Place<F>, way: number, others: readonly number[]): readonly Place<F>[] {
    const end = this.#ends[way];
    if (!end) return [];
    const [from, to] = [this.#along(root), this.#along(end)];
    const passed = new Map<number, Place<F>>();
    for (const other of others) {
      const place = this.#ends[other];
      const at = place ? this.#along(place) : from;
      if (place && (at - from) * (at - to) < 0) passed.set(at, place);
    }
    const inOrder = [...passed].sort(([p], [q]) => (from < to ? p - q : q - p));
    const isThere = end.point.x === root.point.x && end.point.y === root.point.y;
    return [...inOrder.map(([, place]) => place), ...(isThere ? [] : [end])];
  }
}
