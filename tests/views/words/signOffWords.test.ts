import { describe, expect, test } from 'vitest';
import { moveMicTip } from '../../../src/layout/edit/mics.ts';
import { addSignOff } from '../../../src/layout/edit/signOffs.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { wishKeptWords } from '../../../src/views/words/signOffWords.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('demo');
const analyse = createAnalyst();
const stand = layout.mics.find(({ mount }) => mount.kind === 'stand');
if (stand?.mount.kind !== 'stand') throw new Error('no mic on a stand');
const { id, mount } = stand;

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
