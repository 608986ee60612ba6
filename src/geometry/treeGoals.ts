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

/** A stretch that can be landed on, from its lower node up; of no length at a root. All costs as mm of a way of its own. */
interface Berth<F extends Frame> {
  readonly node: TreeNode<F> | undefined;
  readonly place: Place<F>;
  readonly alongX: number;
  readonly alongY: number;
  readonly length: Mm;
  /** What lies beyond the lower node. */
  readonly rest: Mm;
  /** How long the ways may be up to the lower node, so that none becomes longer than it may. */
  readonly most: Mm;
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
    for (const berth of [...this.#ofTree(chain, perMm), ...this.#ofEnds(chain, perMm)]) {
      if (berth.most > 0 && this.#least(head.place.point, berth) < below) this.#berths.push(berth);
    }
  }

  ahead(point: Vec2<F>): Mm {
    let least = Number.POSITIVE_INFINITY;
    for (const berth of this.#berths) least = Math.min(least, this.#least(point, berth));
    return least;
  }

  from(point: Vec2<F>, length: Mm): readonly TreeLanding<F>[] {
    const found: TreeLanding<F>[] = [];
    for (const berth of this.#berths) {
      const { node, place, alongX, alongY, rest } = berth;
      const left = berth.most - length;
      const direct = gap(point, place.point);
      if (length + direct + rest < this.#below && direct <= left) {
        found.push({ node, place, rest, splits: false });
      }
      if (berth.length === 0) continue;
      const t = this.#landingOn(point, berth, left);
      if (t <= AT_END * berth.length || t >= (1 - AT_END) * berth.length) continue;
      const on = { x: place.point.x + t * alongX, y: place.point.y + t * alongY };
      const beyond = rest - this.#slope * t;
      if (length + gap(point, on) + beyond >= this.#below) continue;
      const at = this.#tree.tangents.place(on);
      found.push({ node, place: at, rest: beyond, splits: true });
    }
    return found;
  }

  /** A point on a stretch is only nearly on it: both halves must be free too. */
  accepts({ node, place, splits }: TreeLanding<F>): boolean {
    if (!splits || !node?.up) return true;
    const { tangents } = this.#tree;
    const free = (other: Place<F>): boolean => tangents.blockers(place, other).length === 0;
    return free(node.place) && free(node.up.place);
  }

  #least(point: Vec2<F>, berth: Berth<F>): Mm {
    const { place, alongX, alongY, length, rest } = berth;
    const t = length > 0 ? Math.min(length, Math.max(0, this.#slantOn(point, berth))) : 0;
    const dx = point.x - (place.point.x + t * alongX);
    const dy = point.y - (place.point.y + t * alongY);
    return Math.sqrt(dx * dx + dy * dy) + rest - this.#slope * t;
  }

  /** G1: how far up the line of a stretch the best landing lies. */
  #slantOn(point: Vec2<F>, { place, alongX, alongY }: Berth<F>): Mm {
    const dx = point.x - place.point.x;
    const dy = point.y - place.point.y;
    const aside = Math.abs(dx * alongY - dy * alongX);
    return dx * alongX + dy * alongY + aside * this.#slant;
  }

  /** The same, but so far up that the ways become no longer than `left` to the lower node and beyond. */
  #landingOn(point: Vec2<F>, berth: Berth<F>, left: Mm): Mm {
    const { place, alongX, alongY } = berth;
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
    return Math.max(best, least + AT_END * berth.length);
  }

  #ofTree({ head, between }: Chain<F>, perMm: number): Berth<F>[] {
    const found: Berth<F>[] = [];
    const under = new Set<TreeNode<F>>([head]);
    for (const node of under) for (const below of node.down) under.add(below);
    const tree = this.#tree;
    const shares = new Map<TreeNode<F>, { readonly cost: number; readonly most: Mm }>();
    for (const node of tree.nodes) {
      if (under.has(node) || between.has(node)) continue;
      const { root } = node;
      let share = shares.get(root);
      if (!share) {
        const cost = tree.rootShare(root, head.ways, head.ways);
        share = { cost, most: this.#most(head, root.place) };
        shares.set(root, share);
      }
      found.push(this.#berth(node, share, perMm));
    }
    return found;
  }

  #berth(
    node: TreeNode<F>,
    share: { readonly cost: number; readonly most: Mm },
    perMm: number,
  ): Berth<F> {
    const { place, up, length, toRoot } = node;
    const to = up?.place.point ?? place.point;
    return {
      node,
      place,
      alongX: length > 0 ? (to.x - place.point.x) / length : 0,
      alongY: length > 0 ? (to.y - place.point.y) / length : 0,
      length,
      rest: share.cost / perMm + this.#slope * toRoot,
      most: share.most - toRoot,
    };
  }

  /** A root at the end of one of the ways. */
  #ofEnds({ head }: Chain<F>, perMm: number): Berth<F>[] {
    const ends = new Set(head.ways.flatMap((way) => this.#tree.endOf(way) ?? []));
    return [...ends].map((place) => ({
      node: undefined,
      place,
      alongX: 0,
      alongY: 0,
      length: 0,
      rest: this.#tree.rootCost(place, head.ways) / perMm,
      most: this.#most(head, place),
    }));
  }

  /** How much all ways of a chain have left from its head to a root. */
  #most(head: TreeNode<F>, root: Place<F>): Mm {
    let most = Number.POSITIVE_INFINITY;
    for (const way of head.ways) {
      const start = this.#tree.startOf.get(way);
      const used = start ? start.toRoot - head.toRoot : 0;
      const allowed = this.#tree.ways[way]?.most ?? 0;
      most = Math.min(most, allowed - used - this.#tree.fan(root, way));
    }
    return most;
  }
}
