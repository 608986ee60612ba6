import { expect, it } from 'vitest';
import { DEFAULT_PATCH, type Leg } from '../../../src/layout/patch.ts';
import {
  addLeg,
  addSplit,
  changeSplit,
  removeLeg,
  removeSplit,
  replaceLeg,
} from '../../../src/patch/splits/editSplits.ts';
import { splitOf, usualSplit } from '../../../src/patch/splits/split.ts';
import { deepFreeze } from '../../support/deepFreeze.ts';

const split = usualSplit('split', 'kick', 'Seat shaker');
const one = deepFreeze(addSplit(deepFreeze(DEFAULT_PATCH), split));
const recorder: Leg = {
  to: 'other',
  name: 'Recorder',
  connection: 'isolated',
  phantom: false,
  lifted: true,
  impedance: 10_000,
};

it('splits come and go', () => {
  expect(one.splits).toEqual([split]);
  expect(removeSplit(one, 'split')).toEqual(DEFAULT_PATCH);
  expect(splitOf(one.splits, 'kick')).toEqual(split);
  expect(splitOf(one.splits, 'snare')).toBeUndefined();
});

it('legs are added, replaced and removed', () => {
  const three = deepFreeze(addLeg(one, 'split', recorder));
  expect(three.splits[0]?.legs).toEqual([...split.legs, recorder]);
  expect(removeLeg(three, 'split', 2)).toEqual(one);
  expect(replaceLeg(one, 'split', 1, recorder).splits[0]?.legs).toEqual([split.legs[0], recorder]);
});

it('a plain Y has only direct legs; what it is of can change alone', () => {
  const y = changeSplit(one, 'split', { kind: 'y' });
  expect(y.splits[0]?.legs.map(({ connection }) => connection)).toEqual(['direct', 'direct']);
  expect(changeSplit(one, 'split', { of: 'snare' }).splits).toEqual([{ ...split, of: 'snare' }]);
});

it('edits without effect give the same object', () => {
  expect(addSplit(one, usualSplit('split', 'snare', 'x'))).toBe(one);
  expect(removeSplit(one, 'gone')).toBe(one);
  expect(changeSplit(one, 'gone', { kind: 'y' })).toBe(one);
  expect(changeSplit(one, 'split', { kind: 'transformer', of: 'kick' })).toBe(one);
  expect(addLeg(one, 'gone', recorder)).toBe(one);
  expect(removeLeg(one, 'split', 7)).toBe(one);
  expect(replaceLeg(one, 'split', -1, recorder)).toBe(one);
});
