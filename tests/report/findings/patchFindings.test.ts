import { expect, test } from 'vitest';
import { demo } from '../../../src/layout/catalogue/kits/demo.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { PatchSettings } from '../../../src/layout/patch.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { findingWords } from '../../../src/views/words/findingWords.ts';

const kit = demo('demo');
const micOf = (micClass: string): string => {
  const mic = kit.mics.find((each) => each.micClass === micClass);
  if (!mic) throw new Error(`the demo has a ${micClass}`);
  return mic.id;
};
const condenser = micOf('pencil-condenser');
const dynamic = kit.mics.find(({ micClass }) => micClass.endsWith('dynamic'))?.id ?? '';

const found = (layout: Layout) => createAnalyst()(layout).findings;
const patched = (change: Partial<PatchSettings>): Layout => ({
  ...kit,
  patch: { ...kit.patch, ...change },
});
const phantom = (mic: string, on: boolean) => ({
  channels: [{ ...plainChannel(mic, mic), phantom: on }],
});

test('a demo as it is has no finding about its patch', () => {
  const codes = found(kit).map(({ code }) => code);
  expect(codes.filter((code) => /phantom|split|channel/.test(code))).toEqual([]);
});

const ribbon: Layout = {
  ...patched(phantom(dynamic, true)),
  mics: kit.mics.map((mic) => (mic.id === dynamic ? { ...mic, micClass: 'ribbon' } : mic)),
};
const usual = usualSplit('split', dynamic, 'Seat shaker');
const twice = [
  { ...plainChannel(condenser, condenser), number: 40 },
  { ...plainChannel(dynamic, dynamic), number: 40 },
];

test.each([
  ['phantom-missing', 'stop', patched(phantom(condenser, false)), condenser],
  ['ribbon-with-phantom', 'stop', ribbon, dynamic],
  ['phantom-not-needed', 'note', patched(phantom(dynamic, true)), dynamic],
  ['channel-twice', 'stop', patched({ channels: twice }), condenser],
  ['split-of-nothing', 'stop', patched({ splits: [{ ...usual, of: 'gone' }] }), undefined],
  ['split-few-legs', 'warn', patched({ splits: [{ ...usual, legs: [] }] }), dynamic],
  ['split-plain-y', 'note', patched({ splits: [{ ...usual, kind: 'y' }] }), dynamic],
  [
    'split-of-split',
    'stop',
    patched({ splits: [usual, { ...usual, id: 'second', of: 'split' }] }),
    undefined,
  ],
] as const)('%s is a %s with its reason', (code, severity, layout, mic) => {
  const finding = found(layout).find((each) => each.code === code);
  if (!finding) throw new Error(`${code} is found`);
  expect(finding.severity).toBe(severity);
  if (mic === undefined) expect(finding.about).toEqual([]);
  else expect(finding.about).toContain(mic);
  const { title, detail, next } = findingWords(finding, layout);
  for (const text of [title, detail, next]) expect(text).not.toMatch(/\?|undefined|NaN/);
});

test('an unplugged mic and an input used twice are said once', () => {
  const [first, second, third] = kit.mics;
  if (!first || !second || !third) throw new Error('the demo has three mics');
  const mics = [{ ...first, input: 3 }, { ...second, input: null }, third];
  const codes = found({ ...kit, mics }).map(({ code }) => code);
  expect(codes.filter((code) => code === 'run-unplugged')).toHaveLength(1);
  expect(codes.filter((code) => code === 'input-twice')).toHaveLength(1);
});

test('keys are unique', () => {
  const layout = patched({ channels: twice, splits: [usual, { ...usual, id: 'again' }] });
  const keys = found(layout).map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
});
