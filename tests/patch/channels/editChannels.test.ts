import { describe, expect, it } from 'vitest';
import { DEFAULT_PATCH } from '../../../src/layout/patch.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import {
  addChannel,
  changeChannel,
  moveChannel,
  orderByFestival,
  removeChannel,
} from '../../../src/patch/channels/editChannels.ts';
import { deepFreeze } from '../../support/deepFreeze.ts';

const MICS = ['kick', 'snare', 'hat'];
const start = deepFreeze(DEFAULT_PATCH);

describe('edits of channels', () => {
  it('set what is given and keep the rest', () => {
    const once = deepFreeze(changeChannel(start, MICS, 'hat', { highPass: 0 }));
    const twice = changeChannel(once, MICS, 'hat', { phantom: false, notes: 'borrowed' });
    expect(twice.channels).toEqual([
      { ...plainChannel('hat', 'hat'), highPass: 0, phantom: false, notes: 'borrowed' },
    ]);
    expect({ ...twice, channels: [] }).toEqual(start);
  });

  it('a channel given back to the usual is no longer kept', () => {
    const set = deepFreeze(changeChannel(start, MICS, 'hat', { pad: 20 }));
    expect(changeChannel(set, MICS, 'hat', { pad: null })).toEqual(start);
    expect(removeChannel(set, 'hat')).toEqual(start);
  });

  it('a second channel copies the first, but not its number, and goes without a trace', () => {
    const set = deepFreeze(changeChannel(start, MICS, 'snare', { number: 5, pad: 10 }));
    const added = deepFreeze(addChannel(set, MICS, 'snare', 'snare-2'));
    expect(added.channels).toEqual([
      { ...plainChannel('snare', 'snare'), number: 5, pad: 10 },
      { ...plainChannel('snare-2', 'snare'), pad: 10 },
    ]);
    expect(removeChannel(added, 'snare-2')).toEqual(set);
    const usual = changeChannel(added, MICS, 'snare-2', { pad: null });
    expect(usual.channels).toContainEqual(plainChannel('snare-2', 'snare'));
  });

  it('moving makes the order by hand; it can be given back', () => {
    const moved = deepFreeze(moveChannel(start, MICS, 'hat', 0));
    expect(moved.order).toEqual(['hat', 'kick', 'snare']);
    expect(orderByFestival(moved)).toEqual(start);
  });

  it('are the same object without effect', () => {
    expect(changeChannel(start, MICS, 'nobody', { pad: 10 })).toBe(start);
    expect(changeChannel(start, MICS, 'hat', { pad: null })).toBe(start);
    expect(addChannel(start, MICS, 'nobody', 'new')).toBe(start);
    expect(addChannel(start, MICS, 'snare', 'hat')).toBe(start);
    expect(removeChannel(start, 'hat')).toBe(start);
    expect(moveChannel(start, MICS, 'kick', 0)).toBe(start);
    expect(orderByFestival(start)).toBe(start);
  });
});
