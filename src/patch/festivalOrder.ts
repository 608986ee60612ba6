import type { Id } from '../layout/fields.ts';
import type { Rig } from '../rig/placed.ts';
import type { HeadPlace, PatchSource, Pickup } from './pickup.ts';

/** O1 The usual order of a festival patch (common practice, no source); mics that hear nothing come last. */
const SOURCES: readonly PatchSource[] = [
  'kick',
  'snare',
  'hiHat',
  'rackTom',
  'floorTom',
  'percussion',
  'ride',
  'cymbal',
  'overhead',
  'none',
];

/** O3 Of one kick: inside, before the front head, at the beater. Of one drum: top, inside, bottom. */
const PLACES: readonly HeadPlace[] = ['top', 'inside', 'bottom', 'front', 'batter'];

/**
 * The ids of mics in festival order.
 *
 * O1 By source: kick, snare, hi-hat, rack toms, floor toms, other percussion, ride, other cymbals, overheads.
 * O2 Toms from high to low: a smaller drum sounds higher, of two alike across the shallower. Else pieces as they are listed.
 * O3 Mics of one piece by their place; what is still alike stays in the order in which it is listed.
 */
export function festivalOrder(pickups: readonly Pickup[], pieces: Rig['pieces']): readonly Id[] {
  const rankOf = festivalRank(pieces);
  const ranked = pickups.map((pickup) => ({ id: pickup.placed.mic.id, rank: rankOf(pickup) }));
  return ranked.toSorted((a, b) => compare(a.rank, b.rank)).map(({ id }) => id);
}

/** What O1 to O3 rank a mic by, the weightier first: the lower number comes first. */
export function festivalRank(pieces: Rig['pieces']): (pickup: Pickup) => readonly number[] {
  const listed = new Map(pieces.map(({ piece }, index) => [piece.id, index]));
  return (pickup) => [
    SOURCES.indexOf(pickup.source),
    ...pitchOf(pickup),
    listed.get(ownOf(pickup) ?? '') ?? 0,
    pickup.place ? PLACES.indexOf(pickup.place) : 0,
  ];
}

/** Overheads have no order of their own sources. */
const ownOf = ({ source, own }: Pickup): Id | undefined =>
  source === 'overhead' ? undefined : own?.id;

function pitchOf({ own, source }: Pickup): readonly [diameter: number, depth: number] {
  const isTom = source === 'rackTom' || source === 'floorTom';
  return isTom && own && 'depth' in own ? [own.diameter, own.depth] : [0, 0];
}

function compare(a: readonly number[], b: readonly number[]): number {
  const place = a.findIndex((value, index) => value !== b[index]);
  return place < 0 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
}
