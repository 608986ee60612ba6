import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mount } from '../layout/mics/mount.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import { placeMic } from '../rig/placeMic.ts';
import { createStandingOf } from '../rig/standing/findStanding.ts';
import { TOUCHING } from '../rig/standing/standing.ts';
import { FIRM, tippingOf } from '../rig/tipping.ts';
import type { Mm } from '../units/quantity.ts';
import { againstPlayerIn, type InTheWay, inTheWayKey } from './againstPlayer.ts';
import { HeadRoom } from './headRoom.ts';

/**
 * Rule N4: where a mic may stand. It stands in no drum, cymbal, seat or hardware of these, in no other mic (N9), nor in or too near to the player at rest or in the way of a foot or beater (Q1, Q2), even where it does now; nothing else stands in its way that did not before, and nothing
 * deeper than before; its stand, if it was firm, stays firm, or at least as firm as it was. Over heads it has room by rule N8.
 *
 * Rule N9: two mics that meet, or whose mounts do, stand in each other: each can be led out of the other as out of a piece. Which of the two it is
 * is for who asks: once it has left, the other may stay.
 */
export class SpotJudge {
  private readonly layout: Layout;
  private readonly now: PlacedMic;
  /** What stands in the way of a mic that takes the place of the present one. */
  private readonly about: (placed: PlacedMic) => readonly InTheWay[];
  private readonly before: ReadonlyMap<string, Mm>;
  private readonly firm: number;
  private readonly heads: HeadRoom;
  /** Whether the mic stands in a piece where it is. */
  readonly standsIn: boolean;
  /** Whether it can't stay where it is, whatever room what moves leaves it: it stands in a piece, its hardware or another mic, or in or too near to the player. */
  readonly mustLeave: boolean;
  /** What stood in the way of any place that was asked about: mics and pieces. */
  readonly hinderedBy: ReadonlySet<Id>;
  private readonly hindering = new Set<Id>();

  constructor(layout: Layout, rig: Rig, now: PlacedMic) {
    this.layout = layout;
    this.now = now;
    this.hinderedBy = this.hindering;
    const standing = createStandingOf(rig, layout.deck);
    const againstPlayer = againstPlayerIn(layout);
    this.about = (placed) => [...standing(placed), ...againstPlayer(placed)];
    const found = this.about(now);
    this.standsIn = found.some(isInPiece);
    this.mustLeave = found.some(isIn);
    this.before = new Map(
      found.filter((each) => !isIn(each)).map((each) => [inTheWayKey(each), each.overlap]),
    );
    this.firm = Math.min(FIRM, factorOf(now));
    this.heads = new HeadRoom(layout.pieces, this.standsIn ? undefined : now.solids);
  }

  /**
   * How deep something is in the way of the mic mounted so, mm: what is deeper than a mic can move stays in its way. 0 when that can't be told;
   * undefined where the mic may stand.
   */
  depthAt(mount: Mount): Mm | undefined {
    const { depth, tooNear } = this.lookAt(mount);
    // What is near by the least is told as near: a spot is the whole margin away.
    return tooNear > 0 ? Math.max(depth ?? 0, tooNear) : depth;
  }

  /** The room that is asked for over the head of a drum (rule N8), mm. */
  overHead(drum: Id): Mm {
    return this.heads.over(drum);
  }

  /** How much room the player at rest leaves the mic mounted so, mm, the margin at most; undefined where it may not stand with any margin. */
  roomAt(mount: Mount): Mm | undefined {
    const { depth, tooNear } = this.lookAt(mount);
    return depth === undefined ? this.layout.margin - tooNear : undefined;
  }

  /** How deep anything is in the way that a smaller margin would leave there, and how much of the margin about the player is missing, mm. */
  private lookAt(mount: Mount): { readonly depth: Mm | undefined; readonly tooNear: Mm } {
    const placed = placeMic({ ...this.now.mic, mount }, this.layout);
    let depth = this.heads.depthAt(placed.solids);
    let tooNear = 0;
    if (factorOf(placed) < this.firm) depth ??= 0;
    for (const found of this.about(placed)) {
      if (found.code === 'mic-near-player') {
        tooNear = Math.max(tooNear, found.overlap);
        continue;
      }
      const worse = found.overlap - (this.before.get(inTheWayKey(found)) ?? 0) - TOUCHING;
      if (worse <= 0) continue;
      for (const id of found.about) this.hindering.add(id);
      // Feet may get out of each other's way faster than they move.
      depth = Math.max(depth ?? 0, found.code === 'feet-overlap' ? 0 : worse);
    }
    return { depth, tooNear };
  }
}

const isInPiece = ({ code }: InTheWay): boolean =>
  code === 'mic-in-shell' || code === 'boom-through-piece';

const isIn = (found: InTheWay): boolean =>
  isInPiece(found) ||
  found.code === 'mic-against-stand' ||
  found.code === 'mic-against-mic' ||
  found.code === 'mic-in-player' ||
  found.code === 'mic-near-player' ||
  found.code === 'mic-in-pedal';

const factorOf = (placed: PlacedMic): number =>
  tippingOf(placed)?.factor ?? Number.POSITIVE_INFINITY;
