import type { Mm } from '../units/quantity.ts';
import { EndRow } from './endRow.ts';
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
  /** Undefined for a root, where the ways part for their ends, and for what was taken out. */
  up: TreeNode<F> | undefined = undefined;
  readonly down: TreeNode<F>[] = [];
  /** Ways that begin here, and all that pass here. */
  readonly starts: number[] = [];
  ways: readonly number[] = [];
  /** The stretch up: its direction and length; and the length of all up to the root. */
  alongX = 0;
  alongY = 0;
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
  readonly between: readonly TreeNode<F>[];
  /** Where other ways join; undefined where the root is the chain's own. */
  readonly top: TreeNode<F> | undefined;
  readonly cost: number;
}

/**
 * Ways that share stretches on their way to ends that lie side by side, as a forest.
 *
 * B1 Each way runs from its start up to a root and from there straight to its end, past the ends that lie between.
 * B2 A tree costs, for every stretch with k ways, its length times `once` + k `each`; and what its ways cost from the root on (E1).
 * B3 No way becomes longer than it may.
 */
export class WayTree<F extends Frame> {
  readonly tangents: Tangents<F>;
  readonly ways: readonly WayToGather<F>[];
  readonly weights: GatherWeights;
  /** In the order in which they came. */
  readonly nodes: TreeNode<F>[] = [];
  readonly startOf = new Map<number, TreeNode<F>>();
  readonly row: EndRow<F>;
  /** Grows with every change. */
  changes = 0;

  constructor(tangents: Tangents<F>, ways: readonly WayToGather<F>[], weights: GatherWeights) {
    this.tangents = tangents;
    this.ways = ways;
    this.weights = weights;
    const ends = ways.flatMap(({ own }) => own.at(-1) ?? []);
    this.row = new EndRow(tangents, ends, weights);
  }

  /** What one mm costs that `count` ways share. */
  perMm(count: number): number {
    return this.weights.once + count * this.weights.each;
  }

  /** What the whole tree costs (B2). */
  cost(): number {
    let cost = 0;
    for (const { up, length, ways, place } of this.nodes) {
      cost += up ? length * this.perMm(ways.length) : this.row.cost(place, ways);
    }
    return cost;
  }

  /** What the ways that pass a node cost from a root on: only what they add to that of others. */
  rootShare(root: TreeNode<F>, { ways, root: own }: TreeNode<F>): number {
    const others = root === own ? root.ways.filter((way) => !ways.includes(way)) : root.ways;
    return this.row.cost(root.place, ways, others);
  }

  /** Lays ways that come together at `head` over places that begin there, to a landing on the tree or at a new root. */
  attach(head: TreeNode<F>, places: readonly Place<F>[], landing: TreeNode<F> | undefined): void {
    let last = head;
    const end = landing ? places.length - 1 : places.length;
    for (let i = 1; i < end; i += 1) {
      const place = places[i];
      if (!place) break;
      const node = this.#add(place);
      node.ways = head.ways;
      link(last, node);
      last = node;
    }
    if (landing) link(last, landing);
    this.#measure(last);
    refreshWays(landing);
  }

  /** The node where a way begins, not laid yet. */
  begin(way: number, { own: [start] }: WayToGather<F>): TreeNode<F> | undefined {
    if (!start) return undefined;
    const node = this.#add(start);
    node.starts.push(way);
    node.ways = [way];
    this.startOf.set(way, node);
    return node;
  }

  /** Lays a way on its own shortest way; the node where it begins. */
  lay(way: number, entry: WayToGather<F>): TreeNode<F> | undefined {
    const node = this.begin(way, entry);
    if (node) this.attach(node, entry.own, undefined);
    return node;
  }

  /** A new node on the stretch up from a node. */
  split(node: TreeNode<F>, place: Place<F>): TreeNode<F> {
    const { up } = node;
    const middle = this.#add(place);
    middle.ways = node.ways;
    if (up) {
      unlink(node);
      link(middle, up);
    }
    link(node, middle);
    this.#measure(middle);
    return middle;
  }

  /** Takes the nodes of a chain above its head out. */
  detach({ head, between, top }: Chain<F>): void {
    unlink(head);
    for (const node of between) {
      unlink(node);
      this.#remove(node);
    }
    refreshWays(top);
  }

  /** Takes out a node with one node below: the stretches over it become one. */
  straighten(node: TreeNode<F>): void {
    const { up } = node;
    const below = node.down[0];
    if (!up || !below) return;
    unlink(below);
    unlink(node);
    this.#remove(node);
    link(below, up);
    this.#measure(below);
  }

  move(node: TreeNode<F>, place: Place<F>): void {
    node.place = place;
    this.#measure(node);
  }

  /** What a way costs that begins at a node and is laid by itself. */
  ownChain(head: TreeNode<F>, { own }: WayToGather<F>): Chain<F> {
    let length = 0;
    for (let i = 1; i < own.length; i += 1) {
      const from = own[i - 1];
      const to = own[i];
      if (from && to) length += gap(from.point, to.point);
    }
    return { head, between: [], top: undefined, cost: this.perMm(1) * length };
  }

  /** What goes from a node up could be laid elsewhere; what it costs now. */
  chainFrom(head: TreeNode<F>): Chain<F> {
    const between: TreeNode<F>[] = [];
    let length = head.length;
    let next = head.up;
    while (next && next.down.length === 1 && next.starts.length === 0) {
      between.push(next);
      length += next.length;
      next = next.up;
    }
    const { ways, root } = head;
    const own = this.perMm(ways.length) * length;
    const shared = this.weights.each * ways.length * (next?.toRoot ?? 0);
    return { head, between, top: next, cost: own + shared + this.rootShare(root, head) };
  }

  #add(place: Place<F>): TreeNode<F> {
    const node = new TreeNode(place);
    this.nodes.push(node);
    return node;
  }

  #remove(node: TreeNode<F>): void {
    this.nodes.splice(this.nodes.indexOf(node), 1);
  }

  /** Lengths and roots of a node that changed and of all below it. */
  #measure(node: TreeNode<F>): void {
    this.changes += 1;
    measure(node, node.up?.root ?? node);
  }
}

function measure<F extends Frame>(node: TreeNode<F>, root: TreeNode<F>): void {
  const { up, place } = node;
  const { x, y } = place.point;
  const to = up?.place.point ?? place.point;
  const length = gap(place.point, to);
  node.root = root;
  node.length = length;
  node.alongX = length > 0 ? (to.x - x) / length : 0;
  node.alongY = length > 0 ? (to.y - y) / length : 0;
  node.toRoot = (up?.toRoot ?? 0) + length;
  for (const below of node.down) measure(below, root);
}

/** Which ways pass a node below which something changed, and all above it. The list is that of the only node below, where there is no other. */
function refreshWays<F extends Frame>(from: TreeNode<F> | undefined): void {
  for (let node = from; node; node = node.up) {
    const first = node.down[0];
    if (first && node.down.length === 1 && node.starts.length === 0) {
      node.ways = first.ways;
      continue;
    }
    const ways = [...node.starts];
    for (const below of node.down) for (const way of below.ways) ways.push(way);
    node.ways = ways;
  }
}

function link<F extends Frame>(below: TreeNode<F>, above: TreeNode<F>): void {
  below.up = above;
  above.down.push(below);
}

function unlink<F extends Frame>(node: TreeNode<F>): void {
  const { up } = node;
  if (!up) return;
  up.down.splice(up.down.indexOf(node), 1);
  node.up = undefined;
}
