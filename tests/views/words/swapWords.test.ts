import { describe, expect, it } from 'vitest';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import type { SwapRow } from '../../../src/report/swapOffer.ts';
import { swapMarkWords, swapStepWords } from '../../../src/views/words/swapWords.ts';

const layout = largeKit('kit');
const step = (what: SwapRow['what'], about: string): SwapRow => ({
  what,
  about,
  place: { x: 0, y: 0, z: 0 },
});
const words = (what: SwapRow['what'], about: string): string =>
  swapStepWords(step(what, about), 'snare', layout);

describe('what to undo, in words', () => {
  it('names what hands are laid on, and where a cable is plugged', () => {
    const input = layout.mics.find(({ id }) => id === 'mic-snare')?.input;
    expect(words('unplug', 'mic-snare')).toBe(`Unplug Snare mic, box input ${input}`);
    expect(words('unclip', 'mic-snare')).toBe('Take Snare mic off with its clip');
    expect(words('swingBoom', 'mic-hi-hat')).toBe('Swing the boom of Hi-hat mic away');
    expect(words('moveAside', 'crash-1')).toBe('Swing Crash 1 aside');
    expect(words('moveAside', 'rack-1')).toBe('Move Rack tom 1 aside');
  });

  it('tells the drum’s own stand from another piece that holds it', () => {
    expect(words('release', 'snare')).toBe('Open its stand');
    expect(words('release', 'kick')).toBe('Loosen it from Kick');
    expect(swapMarkWords(step('release', 'snare'), 'snare')).toBe('open stand');
    expect(swapMarkWords(step('release', 'kick'), 'snare')).toBe('loosen');
  });
});
