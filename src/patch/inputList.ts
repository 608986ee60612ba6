import type { Id } from '../layout/fields.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import type { Mount } from '../layout/mics/mount.ts';
import type { Channel, Insert, PatchSettings, Polarity } from '../layout/patch.ts';
import type { Rig } from '../rig/placed.ts';
import type { Decibels } from '../units/quantity.ts';
import { channelNumbers, channelsInOrder } from './channels/channelOrder.ts';
import { festivalOrder } from './festivalOrder.ts';
import { type HeadPlace, type PatchSource, type Pickup, pickupsOf } from './pickup.ts';
import { reversedMics } from './polarity.ts';
import type { Hertz } from './quantities.ts';
import { splitOf } from './splits/split.ts';
import { rowSupplies, suppliesReaching } from './splits/supply.ts';
import { type HighPassRange, highPassStart, insertStart, padStart } from './starts.ts';

/** A value of a row: what holds, where one would start, and whether it was set by hand. */
export interface Chosen<T> {
  readonly value: T;
  readonly start: T;
  readonly byHand: boolean;
}

/** One row of the input list. */
export interface InputRow {
  /** Of the channel. */
  readonly id: Id;
  readonly channel: number;
  /** Whether the channel's number was set by hand. */
  readonly isNumbered: boolean;
  readonly mic: Id;
  /** Of the mic; a second channel of it has `(2)` behind it. */
  readonly name: string;
  /** The numbered input of the box; null: not plugged. */
  readonly input: number | null;
  readonly source: PatchSource;
  /** What the mic hears, its own source first. */
  readonly hears: readonly Id[];
  readonly place: HeadPlace | null;
  readonly micClass: MicClass;
  readonly mount: Mount;
  readonly phantom: Chosen<boolean>;
  /** Supplies of 48 V that reach the mic, whichever end of a split gives them. */
  readonly supplies: number;
  readonly polarity: Chosen<Polarity>;
  /** 0: none; null: no range is known to start from. */
  readonly highPass: Chosen<Hertz | null>;
  readonly highPassRange: Pick<HighPassRange, 'low' | 'high'> | null;
  readonly pad: Chosen<Decibels>;
  readonly insert: Chosen<Insert>;
  /** The split of the mic's signal; null: none. */
  readonly split: Id | null;
  readonly notes: string;
}

/** The ids of a rig's mics in festival order: what edits of channels are given. */
export const festivalMics = (rig: Rig): readonly Id[] => festivalOrder(pickupsOf(rig), rig.pieces);

/**
 * The input list of a rig. `ranges` are the acoustics' starting points of high-passes for the style chosen; a mic without one
 * starts without a value.
 *
 * R1 48 V starts as the mic's class needs it; where its row hangs behind a split's transformer, or is no end of the split, off.
 * R2 Polarity starts by rule A4, high-pass by B1, insert by B2, pad by B3.
 * R3 All rows of one mic share its preamplifier: 48 V that one of them gives reaches the mic.
 */
export function inputList(
  rig: Rig,
  patch: PatchSettings,
  ranges: readonly HighPassRange[] = [],
): readonly InputRow[] {
  const pickups = pickupsOf(rig);
  const byMic = new Map(pickups.map((pickup) => [pickup.placed.mic.id, pickup]));
  const reversed = reversedMics(pickups);
  const channels = channelsInOrder(festivalOrder(pickups, rig.pieces), patch);
  const numbers = channelNumbers(channels);
  const phantoms = new Map(
    channels.map((channel) => [channel.id, phantomOf(channel, byMic, patch)]),
  );
  const supplied = new Set(
    channels.filter(({ id }) => phantoms.get(id)?.value).map(({ mic }) => mic),
  );
  return channels.flatMap((channel, index): readonly InputRow[] => {
    const pickup = byMic.get(channel.mic);
    const phantom = phantoms.get(channel.id);
    if (!pickup || !phantom) return [];
    const { mic, micClass } = pickup.placed;
    const split = splitOf(patch.splits, mic.id);
    const isSupplied = supplied.has(mic.id);
    return [
      {
        id: channel.id,
        channel: numbers[index] ?? 0,
        isNumbered: channel.number !== null,
        mic: mic.id,
        name: nameOfRow(mic.name, copyOf(channel, channels)),
        input: mic.input,
        source: pickup.source,
        hears: mic.hears,
        place: pickup.place ?? null,
        micClass,
        mount: mic.mount,
        phantom,
        supplies: split ? suppliesReaching(split, isSupplied) : Number(isSupplied),
        polarity: chosen(channel.polarity, reversed.has(mic.id) ? 'reversed' : 'normal'),
        ...highPassOf(channel, ranges),
        pad: chosen(channel.pad, padStart(pickup, micClass, patch.style)),
        insert: chosen(channel.insert, insertStart(pickup, patch.style)),
        split: split?.id ?? null,
        notes: channel.notes,
      },
    ];
  });
}

/** 1 for a mic's own channel, 2 for the next of that mic, and so on. */
const copyOf = ({ id, mic }: Channel, channels: readonly Channel[]): number =>
  id === mic
    ? 1
    : 2 +
      channels
        .filter((each) => each.mic === mic && each.id !== mic)
        .findIndex((each) => each.id === id);

const nameOfRow = (name: string, copy: number): string => (copy === 1 ? name : `${name} (${copy})`);

const chosen = <T>(set: T | null, start: T): Chosen<T> => ({
  value: set ?? start,
  start,
  byHand: set !== null,
});

function phantomOf(
  { mic, phantom }: Channel,
  byMic: ReadonlyMap<Id, Pickup>,
  { splits }: PatchSettings,
): Chosen<boolean> {
  const needs = byMic.get(mic)?.placed.micClass.phantom ?? false;
  return chosen(phantom, rowSupplies(needs, splitOf(splits, mic)));
}

function highPassOf(
  { mic, highPass }: Channel,
  ranges: readonly HighPassRange[],
): Pick<InputRow, 'highPass' | 'highPassRange'> {
  const range = ranges.find((entry) => entry.mic === mic);
  return {
    highPass: chosen<Hertz | null>(highPass, range ? highPassStart(range) : null),
    highPassRange: range ? { low: range.low, high: range.high } : null,
  };
}
