import { describe, expect, test } from 'vitest';
import { moveMicTip } from '../../../src/layout/edit/mics.ts';
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

  test('a mark is not measured from itself, and what else stands over it is 0 from it', () => {
    const head = { ...spot, point: 'frontHead' } as const;
    expect(checkWords(head, layout)).toBe('610 mm from the throne mark');
    expect(checkWords(spot, layout)).toBe('610 mm from the throne mark, 0 mm from the kick mark');
    const atThrone = { ...measures, fromThrone: 0, fromKick: 900 };
    const over = { ...spot, point: 'micFront', measures: atThrone } as const;
    expect(checkWords(over, layout)).toBe('0 mm from the throne mark, 900 mm from the kick mark');
    const throne = { ...over, point: 'middle' } as const;
    expect(checkWords(throne, layout)).toBe('900 mm from the kick mark');
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
    expect(micSetting(stand, layout, report).join('; ')).toBe(
      'a leg toward 2:00; clutch 1050 mm high, boom 366 mm to the mic, toward 2:50; front of the mic 985 mm high; pointing toward 4:40, 65° down',
    );
  });
});

test('a mic on a stand is found by its own measures, not by those of its base alone', () => {
  const mic = layout.mics.find(({ name }) => name === 'Hi-hat');
  if (mic?.mount.kind !== 'stand') throw new Error('no mic on a stand');
  const step = setUpSteps(layout, []).find(({ key }) => key === `mic:${mic.id}`);
  if (!step) throw new Error('no such step');
  const moved = moveMicTip(layout, mic.id, { x: mic.mount.tip.x + 60, y: mic.mount.tip.y - 40 });
  const said = (kit: typeof layout): readonly string[] => stepWords(step, kit, report).lines;
  const front = (kit: typeof layout) =>
    said(kit).find((line) => line.startsWith('Front of the mic: '));
  expect(front(layout)).toMatch(
    /^Front of the mic: \d+ mm from the left edge, \d+ mm from the back edge$/,
  );
  const there = setUpSteps(moved, []).find(({ key }) => key === `mic:${mic.id}`);
  if (!there) throw new Error('no such step');
  expect(stepWords(there, moved, report).lines).not.toContain(front(layout));
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
