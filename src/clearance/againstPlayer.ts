import { type Bounds, boundsMeet, boundsOfCapsule, joined } from '../geometry/bounds.ts';
import type { Capsule } from '../geometry/capsule.ts';
import { type CapsuleContact, capsuleToCapsule } from '../geometry/capsuleContact.ts';
import { remembered } from '../geometry/remembered.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { beatersOf } from '../player/beater.ts';
import { feetOf } from '../player/feet.ts';
import { type SeatedPart, seatedOf } from '../player/seated.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import { type Standing, TOUCHING } from '../rig/standing/standing.ts';
import type { Mm } from '../units/quantity.ts';

export type AgainstPlayerCode =
  /** In head, neck, shoulders or trunk of the player at rest, or in a foot that rests on the deck. */
  | 'mic-in-player'
  /** Nearer to head, neck, shoulders or trunk than the margin. */
  | 'mic-near-player'
  /** In a foot at rest on a pedal, or in the beater's way or its axle. */
  | 'mic-in-pedal';

/** What of the player at rest, or of a pedal that is played, a mic is in the way of. */
export type RestPart = SeatedPart | 'foot' | 'beater' | 'axle';

/** A mic that stands in or too near to the player at rest. At most one for each code and pedal. */
export interface AgainstPlayer {
  readonly code: AgainstPlayerCode;
  /** The mic, and the pedal where it is about one. */
  readonly about: readonly Id[];
  readonly part: RestPart;
  /** On the axis of the mic's part where it is worst, kit frame. */
  readonly place: Vec3;
  /** How deep solids overlap; for what is near, how much of the margin is missing, mm. */
  readonly overlap: Mm;
}

/** What a mic is in the way of, and something in the way of it. */
export type InTheWay = Standing | AgainstPlayer;

/** What is wrong is the same as before, however deep, where this is. */
export const inTheWayKey = ({ code, about }: Pick<InTheWay, 'code' | 'about'>): string =>
  `${code} ${about.join(' ')}`;

type Kit = Pick<Layout, 'player' | 'pieces' | 'margin'>;

/** What of each mic of a kit is in the player's way. */
export type AgainstPlayerOf = (
  placed: Pick<PlacedMic, 'mic' | 'solids'>,
) => readonly AgainstPlayer[];

/**
 * What each mic of a kit is in the way of with nobody moving. It is no part of the clearances (rule C1), which are those of sticks, arms, legs
 * and swinging cymbals. Feet of stands are judged on the plan (K6 of the rig), not here.
 *
 * Q1 No part of a mic and its mount may be in head, neck, shoulders or trunk of the player who sits upright (B2 to B4 of the player),
 *    nor nearer to them than the margin. Arms at rest are not asked: they move.
 * Q2 Nor in a foot at rest (L5), in the beater's way, or in its axle with the posts (L6); there is no margin about these, for mics are put beside them.
 */
export function againstPlayerIn(kit: Kit): AgainstPlayerOf {
  const groups = groupsOf(kit);
  return ({ mic, solids }) => {
    let found: readonly AgainstPlayer[] = NOTHING;
    for (const group of groups) {
      const next = foundIn(group, mic.id, solids);
      if (next) found = withWorst(found, next);
    }
    return found;
  };
}

/** {@link againstPlayerIn} for one layout after another: kept while player, pieces and margin stay the same, and what it found with it. */
export function createAgainstPlayer(): (kit: Kit) => AgainstPlayerOf {
  let last: { readonly kit: Kit; readonly of: AgainstPlayerOf } | undefined;
  return ({ player, pieces, margin }) => {
    const same =
      last?.kit.player === player && last.kit.pieces === pieces && last.kit.margin === margin;
    if (!last || !same) {
      const kit = { player, pieces, margin };
      last = { kit, of: remembered(againstPlayerIn(kit)) };
    }
    return last.of;
  };
}

const NOTHING: readonly AgainstPlayer[] = [];

/** Solids that are told as one thing, with the box round all that is too near to them. */
interface Group {
  readonly code: 'mic-in-player' | 'mic-in-pedal';
  readonly pedal: Id | null;
  /** What a mic must keep off these, mm. */
  readonly margin: Mm;
  readonly bounds: Bounds;
  readonly solids: readonly {
    readonly part: RestPart;
    readonly capsule: Capsule;
    readonly bounds: Bounds;
  }[];
}

type Part = readonly [part: RestPart, capsules: readonly Capsule[]];

function groupsOf({ player, pieces, margin }: Kit): readonly Group[] {
  const { head, neck, shoulders, trunk } = seatedOf(player);
  const body: readonly Part[] = [
    ['head', head],
    ['neck', [neck]],
    ['shoulders', [shoulders]],
    ['trunk', trunk],
  ];
  const beaters = beatersOf(pieces);
  return [
    ...groupOf('mic-in-player', null, margin, body),
    ...feetOf(player, pieces).flatMap(({ pedal, solids }) =>
      groupOf(pedal === null ? 'mic-in-player' : 'mic-in-pedal', pedal, 0, [['foot', solids]]),
    ),
    ...beaters.flatMap(({ pedal, swept, frame }) =>
      groupOf('mic-in-pedal', pedal, 0, [
        ['beater', swept],
        ['axle', frame],
      ]),
    ),
  ];
}

function groupOf(
  code: Group['code'],
  pedal: Id | null,
  margin: Mm,
  parts: readonly Part[],
): readonly Group[] {
  const solids = parts.flatMap(([part, capsules]) =>
    capsules.map((capsule) => {
      const bounds = boundsOfCapsule({ ...capsule, radius: capsule.radius + margin });
      return { part, capsule, bounds };
    }),
  );
  const bounds = joined(solids.map((solid) => solid.bounds));
  return bounds ? [{ code, pedal, margin, bounds, solids }] : [];
}

function foundIn(group: Group, mic: Id, solids: readonly MicSolid[]): AgainstPlayer | undefined {
  const worst = worstIn(group, solids);
  if (!worst) return undefined;
  const { part, gap, at: place } = worst;
  const about = group.pedal === null ? [mic] : [mic, group.pedal];
  if (gap < -TOUCHING) return { code: group.code, about, part, place, overlap: -gap };
  if (group.margin === 0) return undefined;
  return { code: 'mic-near-player', about, part, place, overlap: group.margin - gap };
}

interface Worst extends CapsuleContact {
  readonly part: RestPart;
}

/** The smallest gap between a mic and a group that is smaller than the group's margin. */
function worstIn(group: Group, solids: readonly MicSolid[]): Worst | undefined {
  let worst: Worst | undefined;
  for (const { part, capsule } of solids) {
    if (part === 'base') continue;
    const box = boundsOfCapsule(capsule);
    if (!boundsMeet(box, group.bounds)) continue;
    for (const other of group.solids) {
      if (!boundsMeet(box, other.bounds)) continue;
      const contact = capsuleToCapsule(capsule, other.capsule);
      if (contact.gap < (worst?.gap ?? group.margin)) worst = { part: other.part, ...contact };
    }
  }
  return worst;
}

/** A list with one more, or with the worse of two that say the same of the same. */
function withWorst(found: readonly AgainstPlayer[], next: AgainstPlayer): readonly AgainstPlayer[] {
  const key = inTheWayKey(next);
  const known = found.find((one) => inTheWayKey(one) === key);
  if (!known) return [...found, next];
  return known.overlap >= next.overlap ? found : found.map((one) => (one === known ? next : one));
}
