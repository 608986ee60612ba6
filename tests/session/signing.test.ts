import { beforeEach, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import {
  answersOf,
  beginSigning,
  goTo,
  questionAt,
  say,
  sayAllFine,
  signing,
  startAgain,
  stepBeside,
} from '../../src/session/signing.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;
const [first = '', second = ''] = kit.mics.map(({ id }) => id);
const now = () => signing.getState();

beforeEach(() => startAgain('kit', [first, second]));

test('the mics are asked about in turn, then the stands, then the way out, then the whole; and back again', () => {
  const seen = [now().step];
  for (let i = 0; i < 6; i += 1) {
    goTo(stepBeside(now(), 1));
    seen.push(now().step);
  }
  expect(seen.map(({ at }) => at)).toEqual([
    'start',
    'mic',
    'mic',
    'stands',
    'lane',
    'consent',
    'consent',
  ]);
  for (const step of seen.slice(0, 6).toReversed().slice(1)) {
    goTo(stepBeside(now(), -1));
    expect(now().step).toEqual(step);
  }
  expect(questionAt(now())).toBeNull();
});

test('what is said is kept while the same mics are asked about, and gone with others', () => {
  say({ about: 'mic', mic: first }, { answer: 'move', note: 'Here' });
  say({ about: 'mic', mic: first }, { wish: { x: 1, y: 2 } });
  beginSigning('kit', [first, second]);
  expect(now().said[`mic:${first}`]).toEqual({
    answer: 'move',
    note: 'Here',
    wish: { x: 1, y: 2 },
  });
  beginSigning('kit', [second]);
  expect(now().said).toEqual({});
});

test('the answers carry names, wishes only of what is to be moved, and notes cut to what a file takes', () => {
  say(
    { about: 'mic', mic: first },
    { answer: 'move', note: 'n'.repeat(900), wish: { x: 1, y: 2 } },
  );
  say({ about: 'mic', mic: second }, { answer: 'fine', wish: { x: 5, y: 5 } });
  say({ about: 'lane' }, { answer: 'move', note: 'Too narrow' });
  const name = kit.mics[0]?.name;
  expect(answersOf(now(), kit, true)).toEqual([
    { about: 'mic', mic: first, name, answer: 'move', note: 'n'.repeat(400), wish: { x: 1, y: 2 } },
    { about: 'mic', mic: second, name: kit.mics[1]?.name, answer: 'fine', note: '', wish: null },
    { about: 'stands', answer: 'fine', note: '' },
    { about: 'lane', answer: 'move', note: 'Too narrow' },
  ]);
});

test('all fine takes back what was to be moved and leads to the consent', () => {
  say({ about: 'stands' }, { answer: 'move' });
  sayAllFine();
  expect(now().step).toEqual({ at: 'consent' });
  expect(answersOf(now(), kit, true).every(({ answer }) => answer === 'fine')).toBe(true);
});

test('what was never answered is no answer of someone who does not agree', () => {
  sayAllFine();
  expect(answersOf(now(), kit, false)).toEqual([]);
  say({ about: 'mic', mic: second }, { answer: 'move', note: 'Here' });
  say({ about: 'stands' }, { answer: 'fine' });
  expect(answersOf(now(), kit, false)).toMatchObject([
    { mic: second, answer: 'move' },
    { about: 'stands', answer: 'fine' },
  ]);
});

test('a mic that is gone meanwhile is not answered for', () => {
  expect(answersOf(now(), { mics: kit.mics.slice(1) }, true)).toHaveLength(3);
});
