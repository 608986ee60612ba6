import { expect, it } from 'vitest';
import { plainChannel } from '../../src/patch/channels/channel.ts';
import { patchFacts } from '../../src/patch/patchFacts.ts';
import { usualSplit } from '../../src/patch/splits/split.ts';
import { demoWithMore, patchWith, rowsOf } from './scenes.ts';

it('says first what is wrong with the list, then with the splits, which see the 48 V of all rows of a mic', () => {
  const splits = [usualSplit('split', 'mic-hi-hat', 'Monitors')];
  const off = { ...plainChannel('mic-hi-hat', 'mic-hi-hat'), phantom: false };
  const codesWith = (patch: ReturnType<typeof patchWith>) =>
    patchFacts(rowsOf(demoWithMore, patch), patch).map(({ code }) => code);
  const list = ['run-unplugged', 'run-unplugged'];
  expect(codesWith(patchWith({ splits }))).toEqual(list);
  expect(codesWith(patchWith({ splits, channels: [off] }))).toEqual([
    ...list,
    'split-phantom-none',
  ]);
  const second = plainChannel('hat-2', 'mic-hi-hat');
  expect(codesWith(patchWith({ splits, channels: [off, second] }))).toEqual([
    ...list,
    'input-two-channels',
  ]);
});
