import { expect, it } from 'vitest';
import { plainChannel } from '../../src/patch/channels/channel.ts';
import { moveChannel } from '../../src/patch/channels/editChannels.ts';
import { festivalMics } from '../../src/patch/inputList.ts';
import { plugByList } from '../../src/patch/plugByList.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { demoWithMore, patchWith, rowsOf } from './scenes.ts';

it('numbers mics from 1 in the order of the rows; further channels of a mic take no input', () => {
  const mics = festivalMics(buildRig(demoWithMore));
  const doubled = patchWith({ channels: [plainChannel('kick-2', 'mic-kick-in')] });
  const inputs = plugByList(
    rowsOf(demoWithMore, moveChannel(doubled, mics, 'mic-snare-bottom', 0)),
  );
  expect(inputs.get('mic-snare-bottom')).toBe(1);
  expect(inputs.get('mic-kick-in')).toBe(2);
  expect(inputs.get('mic-kick-plate')).toBe(3);
  expect([...inputs.values()]).toEqual(mics.map((_, index) => index + 1));
});
