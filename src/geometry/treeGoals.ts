import type { Mm } from '../units/quantity.ts';
import { gap } from './plan.ts';
import type { Place } from './tangents.ts';
import type { Frame, Vec2 } from './vector.ts';
import type { Goals, Landing } from './waySearch.ts';
import type { Chain, TreeNode, WayTree } from './wayTree.ts';

/** Where ways may join a tree: at a node, on the stretch up from it (`splits`), or at a root of their own. */
export interface TreeLanding<F extends Frame> extends Landing<F> {
  readonly node: TreeNode<F> | undefined;
  readonly splits: boolean;
}

/** A stretch that can be landed on, from its lower node up; of no length at a root. */
interface Stretch<F extends Frame> {
  readonly place: Place<F>;
  readonly alongX: number;
  readonly alongY: number;
  readonly length: Mm;
}

/** A stretch with what lies beyond its lower node, in mm of a way of its own: the landing at that node, and more. */
interface Berth<F extends Frame> extends TreeLanding<F> {
  readonly place: Place<F>;
  readonly stretch: Stretch<F>;
  /** Whether the lower node itself can be landed on (G3). */
  readonly isOpen: boolean;
  /** How long the ways may be up to the lower node, so that none becomes longer than it may. */
  readonly most: Mm;
}

/** What lies beyond a root for the ways of a chain, and how long they may be up to it. */
interface Beyond<F extends Frame> {
  readonly root: TreeNode<F>;
  readonly rest: Mm;
  readonly most: Mm;
}

/** Whether a node is another, or lies below it. */
function isUnder<F extends Frame>(node: TreeNode<F>, above: TreeNode<F>): boolean {
  for (let next: TreeNode<F> | undefined = node; next; next = next.up) {
    if (next === above) return true;
  }
  return false;
}

/** G3 */
function isFreeFor<F extends Frame>({ free }: Place<F>, from: Place<F>): boolean {
  if (!free || free.size === 0) return true;
  for (const obstacle of free) if (!from.free?.has(obstacle)) return false;
  return true;
}

/** Shares of a stretch's end within which landing on it is landing at the end. */
const AT_END = 1e-6;

/**
 * The places where the ways of a chain may come down, seen from its head.
 *
 * G1 Beyond a landing every way costs only itself, since the stretch is laid already. So on a stretch the best landing is not the
 *    nearest point: the way slants in, the more the more ways come (as light at a border: the sine of the angle to the
 *    perpendicular is what a laid mm costs by what a new one costs).
 * G2 Only what could cost less than `below` (mm of a way of its own) is a landing.
 * G3 What is free for a way where it begins is not free for others: they don't join it there.
 */
export class TreeGoals<F extends Frame> implements Goals<F, TreeLanding<F>> {
  readonly #tree: WayTree<F>;
  readonly #berths: Berth<F>[] = [];
  /** What a mm beyond the landing costs by what one before it costs. */
  readonly #slope: number;
  readonly #slant: number;
  readonly #below: Mm;
  constructor(tree: WayTree<F>, chain: Chain<F>, below: Mm) {
    const { head } = chain;
    const { each } = tree.weights;
    const perMm = tree.perMm(head.ways.length);
    this.#tree = tree;
    this.#slope = (head.ways.length * each) / perMm;
    this.#slant = this.#slope / Math.sqrt(1 - this.#slope * this.#slope);
    this.#below = below;
    this.#addTree(chain, perMm);
    this.#addEnds(chain, perMm);
  }

  /** Whether there is no place to come down. */
  get areNone(): boolean {
    return this.#berths.length === 0;
  }

  ahead(point: Vec2<F>): Mm {
    let least = Number.POSITIVE_INFINITY;
    for (const { stretch, rest } of this.#berths) {
      const value = this.#straightTo(point, stretch) + rest;
      if (value < least) least = value;
    }
    return least;
  }

  from(point: Vec2<F>, length: Mm): readonly TreeLanding<F>[] {
    const found: TreeLanding<F>[] = [];
    for (const berth of this.#berths) {
      const { node, stretch, isOpen, rest, most, place } = berth;
      if (length + this.#straightTo(point, stretch) + rest >= this.#below) continue;
      const left = most - length;
      const direct = gap(point, place.point);
      if (isOpen && length + direct + rest < this.#below && direct <= left) found.push(berth);
      if (stretch.length === 0) continue;
      const t = this.#landingOn(point, stretch, left);
      if (t <= AT_END * stretch.length || t >= (1 - AT_END) * stretch.length) continue;
      const on = {
        x: place.point.x + t * stretch.alongX,
        y: place.point.y + t * stretch.alongY,
      };
      const beyond = rest - this.#slope * t;
      if (length + gap(point, on) + beyond >= this.#below) continue;
      found.push({ node, point: on, place: undefined, rest: beyond, splits: true });
    }
    return found;
  }

  /** A point on a stretch is only nearly on it: both halves must be free too. */
  accepts({ node, splits }: TreeLanding<F>, place: Place<F>): boolean {
    if (!splits || !node?.up) return true;
    const { tangents } = this.#tree;
    const free = (other: Place<F>): boolean => tangents.blockers(place, other).length === 0;
    return free(node.place) && free(node.up.place);
  }

  /** The least to a stretch and from there up it, less what lies beyond its lower node. */
  #straightTo(point: Vec2<F>, stretch: Stretch<F>): Mm {
    const { place, alongX, alongY, length } = stretch;
    const t = length > 0 ? Math.min(length, Math.max(0, this.#slantOn(point, stretch))) : 0;
    const dx = point.x - (place.point.x + t * alongX);
    const dy = point.y - (place.point.y + t * alongY);
    return Math.sqrt(dx * dx + dy * dy) - this.#slope * t;
  }

  /** G1: how far up the line of a stretch the best landing lies. */
  #slantOn(point: Vec2<F>, { place, alongX, alongY }: Stretch<F>): Mm {
    const dx = point.x - place.point.x;
    const dy = point.y - place.point.y;
    const aside = Math.abs(dx * alongY - dy * alongX);
    return dx * alongX + dy * alongY + aside * this.#slant;
  }

  /** The same, but so far up that the ways become no longer than `left` to the lower node and beyond. */
  #landingOn(point: Vec2<F>, stretch: Stretch<F>, left: Mm): Mm {
    const { place, alongX, alongY } = stretch;
    const dx = point.x - place.point.x;
    const dy = point.y - place.point.y;
    const aside = Math.abs(dx * alongY - dy * alongX);
    const foot = dx * alongX + dy * alongY;
    const best = foot + aside * this.#slant;
    const straight = Math.sqrt(aside * aside + (best - foot) * (best - foot));
    if (straight <= left + best) return best;
    // From sqrt(aside^2 + (t - foot)^2) = left + t; a little more, for rounding.
    const room = left + foot;
    if (room <= 0) return Number.POSITIVE_INFINITY;
    const least = (aside * aside + foot * foot - left * left) / (2 * room);
    return Math.max(best, least + AT_END * stretch.length);
  }

  #addTree({ head, between }: Chain<F>, perMm: number): void {
    const { point } = head.place;
    const roots: Beyond<F>[] = [];
    for (const node of this.#tree.nodes) {
      const toRoot = this.#slope * node.toRoot;
      // However it comes to the stretch, it gains no more than the stretch's own length.
      if (toRoot - this.#slope * node.length >= this.#below) continue;
      const straight = this.#straightTo(point, node);
      if (straight + toRoot >= this.#below) continue;
      if (between.includes(node) || isUnder(node, head)) continue;
      const beyond = this.#beyond(roots, head, node.root, perMm);
      const rest = beyond.rest + toRoot;
      const most = beyond.most - node.toRoot;
      if (straight + rest >= this.#below || most + node.length <= 0) continue;
      const { place } = node;
      const isOpen = isFreeFor(place, head.place);
      const at = place.point;
      this.#berths.push({
        node,
        point: at,
        place,
        rest,
        splits: false,
        stretch: node,
        isOpen,
        most,
      });
    }
  }

  #beyond(known: Beyond<F>[], head: TreeNode<F>, root: TreeNode<F>, perMm: number): Beyond<F> {
    for (const beyond of known) if (beyond.root === root) return beyond;
    const rest = this.#tree.rootShare(root, head) / perMm;
    const beyond = { root, rest, most: this.#most(head, root.place) };
    known.push(beyond);
    return beyond;
  }

  /** A root at the end of one of the ways. */
  #addEnds({ head }: Chain<F>, perMm: number): void {
    const first = this.#berths.length;
    for (const way of head.ways) {
      const place = this.#tree.row.endOf(way);
      if (!place) continue;
      const straight = gap(head.place.point, place.point);
      if (straight >= this.#below || this.#isAmong(place, first)) continue;
      const rest = this.#tree.row.cost(place, head.ways) / perMm;
      if (straight + rest >= this.#below) continue;
      const most = this.#most(head, place);
      if (most <= 0) continue;
      const stretch = { place, alongX: 0, alongY: 0, length: 0 };
      const node = undefined;
      const point = place.point;
      const isOpen = true;
      this.#berths.push({ node, point, place, rest, splits: false, stretch, isOpen, most });
    }
  }

  #isAmong(place: Place<F>, first: number): boolean {
    for (let i = first; i < this.#berths.length; i += 1) {
      if (this.#berths[i]?.place === place) return true;
    }
    return false;
  }

  /** How much all ways of a chain have left from its head to a root. */
  #most(head: TreeNode<F>, root: Place<F>): Mm {
    const { ways, startOf, row } = this.#tree;
    let most = Number.POSITIVE_INFINITY;
    for (const way of head.ways) {
      const used = (startOf.get(way)?.toRoot ?? head.toRoot) - head.toRoot;
      const left = (ways[way]?.most ?? 0) - used - row.fan(root, way);
      if (left < most) most = left;
    }
    return most;
  }
}
