import { describe, expect, test } from 'vitest';
import { moveMicTip } from '../../../src/layout/edit/mics.ts';
import { addSignOff } from '../../../src/layout/edit/signOffs.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { strikeWarnings, wishKeptWords } from '../../../src/views/words/signOffWords.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('demo');
const analyse = createAnalyst();
const report = analyse(layout);
const stand = layout.mics.find(({ mount }) => mount.kind === 'stand');
if (stand?.mount.kind !== 'stand') throw new Error('no mic on a stand');
const { id, mount } = stand;

describe('what is said before anyone agrees', () => {
  test('nothing when all is clear; by name and count when not, the struck ones first', () => {
    const as = (...verdicts: readonly ('clear' | 'tight' | 'struck')[]) =>
      report.clearances
        .slice(0, verdicts.length)
        .map((row, at) => ({ ...row, verdict: verdicts[at] ?? 'clear' }));
    expect(strikeWarnings(as('clear', 'clear'), layout)).toEqual([]);
    const told = strikeWarnings(as('tight', 'struck', 'tight'), layout);
    expect(told.map(({ verdict }) => verdict)).toEqual(['struck', 'tight']);
    expect(told[0]?.text).toMatch(/^1 mic would be struck: .+\. Look at it first$/);
    expect(told[1]?.text).toMatch(/^2 mics are tight: .+ and .+\. Look at them first$/);
  });
});

describe('what became of a wish', () => {
  const wish = { x: mount.tip.x + 80, y: mount.tip.y };
  const answer = {
    about: 'mic',
    mic: id,
    name: stand.name,
    answer: 'move',
    note: '',
    wish,
  } as const;
  const wished = addSignOff(layout, {
    name: 'Drummer',
    at: '2031-05-17T18:30:00Z',
    consent: false,
    answers: [answer],
    notes: '',
  });
  const told = (of: typeof layout) => wishKeptWords(id, of, analyse(of));

  test('is told to the one who wished', () => {
    expect(told(layout)).toBeNull();
    expect(told(wished)).toContain('80 mm from that spot now');
    expect(told(moveMicTip(wished, id, wish))).toBe('moved as you asked');
  });
});
