import type { Id } from '../../layout/fields.ts';
import type { Channel, PatchSettings } from '../../layout/patch.ts';
import { plainChannel } from './channel.ts';
import { channelsInOrder, moveInOrder } from './channelOrder.ts';

/**
 * Edits of channels. Every edit is pure and gives the same object when it has no effect: an unknown id, a value that was there
 * already. `mics` are the ids of the layout's mics in festival order.
 */

/** What can be set by hand on a channel. */
export type ChannelChange = Partial<Omit<Channel, 'id' | 'mic'>>;

/** Sets values of a channel; null gives a value back to the usual. */
export function changeChannel(
  patch: PatchSettings,
  mics: readonly Id[],
  id: Id,
  change: ChannelChange,
): PatchSettings {
  const before = channelsInOrder(mics, patch).find((channel) => channel.id === id);
  if (!before) return patch;
  const after: Channel = { ...before, ...change, id, mic: before.mic };
  if (isSame(before, after)) return patch;
  const others = patch.channels.filter((channel) => channel.id !== id);
  const isUsual = id === after.mic && isSame(after, plainChannel(id, after.mic));
  if (isUsual) return { ...patch, channels: others };
  const at = patch.channels.findIndex((channel) => channel.id === id);
  return { ...patch, channels: others.toSpliced(at < 0 ? others.length : at, 0, after) };
}

/** Gives a mic one more channel, which copies its first; its id must be of no other channel. */
export function addChannel(
  patch: PatchSettings,
  mics: readonly Id[],
  mic: Id,
  id: Id,
): PatchSettings {
  const channels = channelsInOrder(mics, patch);
  const first = channels.find((channel) => channel.id === mic);
  if (!first || channels.some((channel) => channel.id === id)) return patch;
  const others = patch.channels.filter((channel) => channel.id !== id);
  return { ...patch, channels: [...others, { ...first, id, number: null }] };
}

/** Takes a channel off the list. A mic's first channel cannot go: it becomes all as usual. */
export function removeChannel(patch: PatchSettings, id: Id): PatchSettings {
  const channels = patch.channels.filter((channel) => channel.id !== id);
  return channels.length === patch.channels.length ? patch : { ...patch, channels };
}

/** Puts a channel at a place of the list, from 0; from then on the order is by hand. */
export function moveChannel(
  patch: PatchSettings,
  mics: readonly Id[],
  id: Id,
  to: number,
): PatchSettings {
  const before = channelsInOrder(mics, patch).map((channel) => channel.id);
  const order = moveInOrder(before, id, to);
  return order === before ? patch : { ...patch, order: [...order] };
}

/** Gives the list back to the festival order. */
export const orderByFestival = (patch: PatchSettings): PatchSettings =>
  patch.order === null ? patch : { ...patch, order: null };

const FIELDS = [
  'id',
  'mic',
  'number',
  'phantom',
  'polarity',
  'highPass',
  'pad',
  'insert',
  'notes',
] as const satisfies readonly (keyof Channel)[];

const isSame = (a: Channel, b: Channel): boolean => FIELDS.every((field) => a[field] === b[field]);
