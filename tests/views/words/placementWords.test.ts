import { describe, expect, test } from 'vitest';
import { moveKit } from '../../../src/layout/edit/stage.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { setUpSteps } from '../../../src/report/placement/steps.ts';
import {
  checkWords,
  edgeWords,
  micSetting,
  pieceSetting,
} from '../../../src/views/words/placementWords.ts';
import { stepWords } from '../../../src/views/words/setUpWords.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('large-kit');
const report = createAnalyst()(layout);
const measures = { fromLeft: 1250.4, fromBack: -120, fromThrone: 610, fromKick: 0 };
const spot = { point: 'stand', at: { x: 0, y: 0 }, measures } as const;

describe('measures as a person reads them', () => {
  test('from the edges, and outside of one', () => {
    expect(edgeWords(spot, layout)).toBe(
      '1250 mm from the left edge, 120 mm outside the back edge',
    );
  });

  test('a mark is not measured from itself', () => {
    expect(checkWords(spot, layout)).toBe('610 mm from the throne mark');
  });
});

describe('how things are set', () => {
  test('directions turn with the kit on its deck', () => {
    const piece = layout.pieces.find(({ id }) => id === 'kick');
    if (!piece) throw new Error('no kick');
    expect(pieceSetting(piece, layout)).toBe('front head faces 12:00');
    expect(pieceSetting(piece, moveKit(layout, { turn: 30 }))).toBe('front head faces 11:00');
  });

  test('a clip is told by the rim, a stand by clutch, boom, height and aim', () => {
    const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
    const stand = layout.mics.find(({ name }) => name === 'Hi-hat');
    if (!clip || !stand) throw new Error('no such mics');
    expect(micSetting(clip, layout, report).join('; ')).toBe(
      'on Snare, at 10:40 of its rim; front of the mic 30 mm inside the rim; 45 mm over the head; pointing 35° down to the middle',
    );
    expect(micSetting(stand, layout, report).at(-1)).toBe('pointing toward 4:40, 65° down');
  });
});

test('a stand that may tip is weighted before its boom goes out', () => {
  const mic = layout.mics.find(({ mount }) => mount.kind === 'stand');
  if (!mic) throw new Error('no mic on a stand');
  const step = setUpSteps(layout, []).find(({ key }) => key === `mic:${mic.id}`);
  if (!step) throw new Error('no such step');
  const tips = {
    key: 'x',
    code: 'stand-may-tip',
    severity: 'warn',
    about: [mic.id],
    place: undefined,
    numbers: {},
  } as const;
  const said = (findings: typeof report.findings): string =>
    stepWords(step, layout, { ...report, findings }).lines.join(' ');
  expect(said([tips])).toContain('Counterweight or sandbag it before the boom goes out');
  expect(said([])).not.toContain('sandbag');
});
