import { type Acoustics, createAcoustics, LEFT_OUT } from '../acoustics/acoustics.ts';
import { type CloseChange, closeChanges } from '../acoustics/changes.ts';
import { type AcousticChoices, DEFAULT_CHOICES } from '../acoustics/choices.ts';
import {
  type Arrangement,
  type OverheadPlace,
  overheadArrangement,
} from '../acoustics/overheadArrangements.ts';
import { claimedLevel, NULL_DEPTH, type Pattern } from '../acoustics/pattern.ts';
import { type VenueChange, venueChange } from '../acoustics/venueChange.ts';
import { remembered } from '../geometry/remembered.ts';
import { findMicClass } from '../layout/catalogue/micClasses.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import type { Venue } from '../layout/venue.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { placeMic } from '../rig/placeMic.ts';
import type { Decibels, Degrees, Mm } from '../units/quantity.ts';
import type { Report } from './report.ts';

/** What the mics of a layout hear, under the names that screens use. Direct sound, an estimate. */
export type Sound = Acoustics;
export type SoundChoices = AcousticChoices;
export type MusicStyle = AcousticChoices['style'];
export type SoundingKind = keyof AcousticChoices['levels'];
export type CloseRow = Sound['close'][number];
export type HearingRow = Sound['hearing'][number];
export type KickRow = Sound['kicks'][number];
export type OverheadSound = NonNullable<Sound['overheads']>;
export type HeightRow = OverheadSound['heights']['rows'][number];
export type TimingRow = Sound['timing']['rows'][number];
export type AlignmentRow = Sound['timing']['alignments'][number];
export type PairRow = Sound['pairs'][number];
export type HighPassRow = Sound['highPasses'][number];
export type SoundChange = CloseChange;
export type AirChange = VenueChange;
export type OverheadStart = Arrangement;
export type OverheadSpot = OverheadPlace;
export type LeftOut = (typeof LEFT_OUT)[number];

/** What every figure leaves out. */
export const LEFT_OUT_OF_SOUND: readonly LeftOut[] = LEFT_OUT;
/** Levels, wash and style unless the user says otherwise. */
export const USUAL_SOUND: SoundChoices = DEFAULT_CHOICES;
/** The deepest null that is claimed of a real mic, dB below the axis. */
export const DEEPEST_NULL: Decibels = NULL_DEPTH;

/** What is heard in layouts with their reports, and what moves of mics did to it. */
export interface SoundReporter {
  /** `choices` count as the same only as the same object. */
  of(layout: Layout, report: Report, choices?: SoundChoices): Sound;
  /**
   * What the last edit of every close mic did: against the mic as it was, among the pieces as they are. `earlier` are the
   * layouts before, the latest last. A mic that was not there before, or can't be placed any more, has no entry.
   */
  changes(
    now: { readonly layout: Layout; readonly report: Report; readonly sound: Sound },
    earlier: readonly Layout[],
    choices?: SoundChoices,
  ): readonly SoundChange[];
  /**
   * What another place of a mic does to what it must hear, among the same pieces. Undefined for a mic that must hear nothing, or is in one of the two
   * layouts alone.
   */
  moved(mic: Id, places: MovedPlaces, choices?: SoundChoices): MovedSound | undefined;
}

type Placed = { readonly layout: Layout; readonly report: Pick<Report, 'rig'> };
interface MovedPlaces {
  readonly before: Placed;
  readonly now: Placed;
}

/** What another place does to what a mic must hear; more is louder, or better kept from the rest. */
export interface MovedSound {
  /** What a close mic is there for; of several pieces of an overhead the one whose level changes most. */
  readonly piece: Id;
  readonly level: Decibels;
  /** Null for what is no close mic, before or now: it is there for the kit. */
  readonly isolation: Decibels | null;
  /** Whether it must hear others too. */
  readonly isOneOfSeveral: boolean;
}

/** A reporter with a memory of its own; it only saves time. Nothing is computed until it is asked. */
export function createSoundReporter(): SoundReporter {
  const acoustics = createAcoustics();
  const placeOf = remembered(placeAgain);
  return {
    of: (layout, { rig }, choices = DEFAULT_CHOICES) => acoustics(layout, rig, choices),
    changes({ layout, report: { rig }, sound }, earlier, choices = DEFAULT_CHOICES) {
      const before = rig.mics.map((now) => {
        const was = micBefore(now.mic, earlier);
        return was && canBePlaced(was, layout) ? placeOf(was)(layout) : now;
      });
      const edited = new Set(
        before.flatMap((placed, i) => (placed === rig.mics[i] ? [] : [placed.mic.id])),
      );
      if (edited.size === 0) return [];
      const then = acoustics(layout, { ...rig, mics: before }, choices);
      return closeChanges(then, sound).filter(({ mic }) => edited.has(mic));
    },
    moved(id, { before, now }, choices = DEFAULT_CHOICES) {
      // What a mic hears does not hang on the other mics: they are left out.
      const heard = ({ layout, report: { rig } }: Placed) =>
        acoustics(layout, { ...rig, mics: rig.mics.filter(({ mic }) => mic.id === id) }, choices);
      const [then, there] = [heard(before), heard(now)];
      const [change] = closeChanges(then, there);
      const [own] = there.close;
      if (!(change && own)) return widelyMoved(id, now.layout, [then, there]);
      const { level, isolation } = change;
      return { piece: own.source, level, isolation, isOneOfSeveral: false };
    },
  };
}

function widelyMoved(
  id: Id,
  { mics }: Layout,
  [then, there]: readonly [Sound, Sound],
): MovedSound | undefined {
  const wanted = mics.find((mic) => mic.id === id)?.hears ?? [];
  const was = then.hearing[0]?.heard ?? [];
  const changes = (there.hearing[0]?.heard ?? []).flatMap(({ piece, level }) => {
    const old = wanted.includes(piece) ? was.find((one) => one.piece === piece) : undefined;
    return old ? [{ piece, level: level - old.level }] : [];
  });
  const [most] = changes.toSorted((p, q) => Math.abs(q.level) - Math.abs(p.level));
  return most && { ...most, isolation: null, isOneOfSeveral: changes.length > 1 };
}

/** Places one mic; the last place is kept while nothing that it hangs on changed. */
function placeAgain(mic: Mic): (layout: Layout) => PlacedMic {
  let last: { readonly layout: Layout; readonly placed: PlacedMic } | undefined;
  return (layout) => {
    const same =
      last?.layout.pieces === layout.pieces &&
      last.layout.ownClasses === layout.ownClasses &&
      last.layout.player === layout.player;
    last = { layout, placed: last && same ? last.placed : placeMic(mic, layout) };
    return last.placed;
  };
}

/** A mic as it was before its last edit; undefined where it was never another. */
function micBefore(now: Mic, earlier: readonly Layout[]): Mic | undefined {
  for (const { mics } of earlier.toReversed()) {
    const was = mics.find(({ id }) => id === now.id);
    if (!was) return undefined;
    if (was !== now && !standsAlike(was, now)) return was;
  }
  return undefined;
}

/** Whether two states of a mic hear the same: its name and its input don't count. */
const standsAlike = (was: Mic, now: Mic): boolean =>
  was.micClass === now.micClass && JSON.stringify(was.mount) === JSON.stringify(now.mount);

function canBePlaced({ mount, micClass }: Mic, layout: Layout): boolean {
  if (!findMicClass(layout, micClass)) return false;
  if (mount.kind === 'clip') {
    return layout.pieces.some((piece) => piece.id === mount.drum && isDrum(piece));
  }
  return (
    mount.kind !== 'plateInKick' ||
    layout.pieces.some(({ id, kind }) => id === mount.kick && kind === 'kick')
  );
}

/** The level that is claimed of a pattern off its axis, relative to the axis. */
export const patternLevel = (pattern: Pattern, angle: Degrees): Decibels =>
  claimedLevel(pattern, angle);

/** Where two overheads would start, left and right of the player; undefined without cymbals. */
export const overheadStart = (
  start: OverheadStart,
  { pieces }: Pick<Layout, 'pieces'>,
  height: Mm,
): readonly [left: OverheadSpot, right: OverheadSpot] | undefined =>
  overheadArrangement(start, pieces, height);

/** What this venue's air changes for the timed pairs, against another. */
export const airChange = (
  { timing }: Sound,
  last: Pick<Venue, 'temperature' | 'humidity'>,
  now: Pick<Venue, 'temperature' | 'humidity'>,
): AirChange => venueChange(timing.rows, last, now);
