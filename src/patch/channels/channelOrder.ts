import type { Id } from '../../layout/fields.ts';
import type { Channel, PatchSettings } from '../../layout/patch.ts';
import { plainChannel } from './channel.ts';

/**
 * The channels of some mics, given in festival order, in the order of the list.
 *
 * C1 Every mic has one channel with its id; further channels of a mic follow its first. A channel whose mic is not there is
 *    none.
 * C2 With an order set by hand, channels that it names stand in that order; others follow, in festival order.
 */
export function channelsInOrder(
  mics: readonly Id[],
  { channels, order }: Pick<PatchSettings, 'channels' | 'order'>,
): readonly Channel[] {
  const byFestival = mics.flatMap((mic) => {
    const own = channels.filter((channel) => channel.mic === mic);
    const first = own.find(({ id }) => id === mic) ?? plainChannel(mic, mic);
    return [first, ...own.filter(({ id }) => id !== mic)];
  });
  if (order === null) return byFestival;
  const byId = new Map(byFestival.map((channel) => [channel.id, channel]));
  const placed = [...new Set(order)].flatMap((id) => byId.get(id) ?? []);
  const named = new Set(placed);
  return [...placed, ...byFestival.filter((channel) => !named.has(channel))];
}

/**
 * C3 The number of each channel: the one set by hand, else the one after the row before; the first row is 1. Two rows can come
 *    out with one number: that is a fact, not repaired here.
 */
export function channelNumbers(channels: readonly Channel[]): readonly number[] {
  let last = 0;
  return channels.map(({ number }) => {
    last = number ?? last + 1;
    return last;
  });
}

/** An order with one channel moved to a place from 0; the same order for one that is not in it, or that is there already. */
export function moveInOrder(order: readonly Id[], id: Id, to: number): readonly Id[] {
  const from = order.indexOf(id);
  if (from < 0 || Number.isNaN(to)) return order;
  const place = Math.min(order.length - 1, Math.max(0, Math.round(to)));
  if (place === from) return order;
  return order.toSpliced(from, 1).toSpliced(place, 0, id);
}
