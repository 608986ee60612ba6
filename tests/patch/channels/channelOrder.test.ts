import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Channel } from '../../../src/layout/patch.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import {
  channelNumbers,
  channelsInOrder,
  moveInOrder,
} from '../../../src/patch/channels/channelOrder.ts';

const MICS = ['kick', 'snare', 'hat', 'tom', 'over'];
const idsOf = (channels: readonly Channel[]) => channels.map(({ id }) => id);
const second = plainChannel('snare-2', 'snare');
const someOrder = fc.option(
  fc.array(fc.constantFrom(...MICS, 'snare-2', 'gone'), { maxLength: 10 }),
);

describe('channels in order', () => {
  it('C1: every mic once, its further channels after its first, none of a mic that is gone', () => {
    const channels = [second, plainChannel('gone', 'gone'), plainChannel('gone-2', 'gone')];
    expect(idsOf(channelsInOrder(MICS, { channels, order: null }))).toEqual([
      'kick',
      'snare',
      'snare-2',
      'hat',
      'tom',
      'over',
    ]);
  });

  it('C1: what is set by hand is kept', () => {
    const set: Channel = { ...plainChannel('hat', 'hat'), phantom: false, notes: 'short lead' };
    expect(channelsInOrder(MICS, { channels: [set], order: null })).toContain(set);
  });

  it('C2: those named by hand stand in that order, the others follow in theirs', () => {
    const order = ['over', 'gone', 'snare-2', 'over', 'kick'];
    expect(idsOf(channelsInOrder(MICS, { channels: [second], order }))).toEqual([
      'over',
      'snare-2',
      'kick',
      'snare',
      'hat',
      'tom',
    ]);
  });

  it('C1 and C2: no order loses, doubles or adds a channel', () => {
    fc.assert(
      fc.property(someOrder, (order) => {
        const all = idsOf(channelsInOrder(MICS, { channels: [second], order }));
        expect(all.toSorted()).toEqual([...MICS, 'snare-2'].toSorted());
        expect(idsOf(channelsInOrder(MICS, { channels: [second], order: all }))).toEqual(all);
      }),
    );
  });
});

describe('C3 channel numbers', () => {
  const numbered = (...numbers: readonly (number | null)[]) =>
    channelNumbers(numbers.map((number, i) => ({ ...plainChannel(`c-${i}`, `c-${i}`), number })));

  it('count from 1, and on from one set by hand', () => {
    expect(numbered(null, null, null)).toEqual([1, 2, 3]);
    expect(numbered(9, null, 3, null, null)).toEqual([9, 10, 3, 4, 5]);
    expect(numbered()).toEqual([]);
  });
});

describe('moving in an order', () => {
  const order = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 3 }), {
    minLength: 1,
    maxLength: 12,
  });

  it('puts the one at its place and leaves the others in their order', () => {
    fc.assert(
      fc.property(order, fc.nat(), fc.integer({ min: -3, max: 15 }), (ids, chosen, to) => {
        const id = ids[chosen % ids.length] ?? '';
        const moved = moveInOrder(ids, id, to);
        expect(moved.indexOf(id)).toBe(Math.min(ids.length - 1, Math.max(0, to)));
        expect(moved.filter((each) => each !== id)).toEqual(ids.filter((each) => each !== id));
        expect(moveInOrder(moved, id, ids.indexOf(id))).toEqual(ids);
      }),
    );
  });

  it('is the same order without effect', () => {
    const ids = ['a', 'b', 'c'];
    expect(moveInOrder(ids, 'b', 1)).toBe(ids);
    expect(moveInOrder(ids, 'x', 0)).toBe(ids);
    expect(moveInOrder(ids, 'a', -5)).toBe(ids);
    expect(moveInOrder(ids, 'a', Number.NaN)).toBe(ids);
  });

  it('reaches every order by steps of one place, as keys move a row', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(MICS, { minLength: MICS.length }), (wanted) => {
        let ids: readonly string[] = MICS;
        for (const [place, id] of wanted.entries()) {
          while (ids.indexOf(id) > place) ids = moveInOrder(ids, id, ids.indexOf(id) - 1);
        }
        expect(ids).toEqual(wanted);
      }),
    );
  });
});
