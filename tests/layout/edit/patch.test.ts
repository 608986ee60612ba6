import { expect, test } from 'vitest';
import { demo } from '../../../src/layout/catalogue/kits/demo.ts';
import { freshId } from '../../../src/layout/edit/ids.ts';
import { deleteMic } from '../../../src/layout/edit/mics.ts';
import { changePatch } from '../../../src/layout/edit/patch.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { PatchSettings } from '../../../src/layout/patch.ts';
import { checkLayout } from '../../../src/layout/read.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';

const kit = demo('demo');
const [first, second] = kit.mics.map(({ id }) => id);
if (first === undefined || second === undefined) throw new Error('the demo has two mics');
const clipped = kit.mics.find(({ mount }) => mount.kind === 'clip');
if (clipped?.mount.kind !== 'clip') throw new Error('the demo has a clip mic');
const drum = clipped.mount.drum;

const withPatch = (change: Partial<PatchSettings>): Layout =>
  changePatch(kit, (patch) => ({ ...patch, ...change }));
const channel = (id: string, mic: string) => ({ ...plainChannel(id, mic), notes: 'x' });

test("a mic's first channel shares its id, a second one has its own (L7)", () => {
  const layout = withPatch({ channels: [channel(first, first), channel('again', first)] });
  expect(layout).not.toBe(kit);
  expect(checkLayout(layout)).toEqual({ ok: true, layout });
});

test.each([
  ['a channel of no mic', { channels: [channel('one', 'nobody')] }],
  ['a channel with another mic’s id', { channels: [channel(second, first)] }],
  ['two first channels', { channels: [channel(first, first), channel(first, first)] }],
  ['a channel with a piece’s id', { channels: [channel(drum, first)] }],
  ['a split with a mic’s id', { splits: [usualSplit(first, second, 'Monitors')] }],
  ['two splits of one id', { splits: [usualSplit('s', first, 'A'), usualSplit('s', second, 'B')] }],
])('%s has no effect as an edit and is refused as a document (L1, L7)', (_, change) => {
  expect(withPatch(change)).toBe(kit);
  expect(checkLayout({ ...kit, patch: { ...kit.patch, ...change } })).toMatchObject({ ok: false });
});

test('what order, ticks, line check and splits name may be gone', () => {
  const layout = withPatch({
    order: ['gone', first],
    splits: [usualSplit('s', 'gone', 'Monitors')],
    ticks: [{ kind: 'mic', which: 'gone', out: 1, back: 0 }],
    lineCheck: [
      {
        channel: 'gone',
        outcome: 'fail',
        note: '',
        mic: 'gone',
        micClass: 'gone',
        input: 4,
        phantom: false,
      },
    ],
  });
  expect(checkLayout(layout)).toEqual({ ok: true, layout });
});

test('values are fitted to their limits', () => {
  const channels = [{ ...channel(first, first), highPass: 5000, notes: 'x'.repeat(300) }];
  const [fitted] = withPatch({ channels, tapeRolls: -3 }).patch.channels;
  expect(fitted).toMatchObject({ highPass: 1000, notes: 'x'.repeat(200) });
});

test('a mic takes its channels with it, alone or with its drum', () => {
  const channels = [channel(clipped.id, clipped.id), channel('again', clipped.id)];
  const others = [channel(first === clipped.id ? second : first, first)].filter(
    ({ mic }) => mic !== clipped.id,
  );
  const layout = withPatch({ channels: [...channels, ...others] });
  expect(layout.patch.channels).toHaveLength(2 + others.length);
  expect(deleteMic(layout, clipped.id).patch.channels).toEqual(others);
  expect(deletePiece(layout, drum).patch.channels).toEqual(others);
});

test('a fresh id is none of a channel or split', () => {
  const layout = withPatch({ splits: [usualSplit('split', first, 'Monitors')] });
  expect(freshId(layout, 'split')).toBe('split-2');
});

test.each(['box', 'cable', 'mic'] as const)('a spare rule of its own for %s is kept', (kind) => {
  const spares = { ...kit.patch.spares, byKind: { [kind]: { percent: 50, least: 2 } } };
  const layout = withPatch({ spares });
  expect(layout.patch.spares).toEqual(spares);
  expect(checkLayout(JSON.parse(JSON.stringify(layout)))).toEqual({ ok: true, layout });
});
