import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ZoneKeeper } from '../../src/app/zoneKeeper.ts';
import type { ZoneAnswer, ZoneQuestion } from '../../src/app/zoneQuestion.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { ForbiddenZone } from '../../src/report/zone.ts';
import {
  beginGesture,
  commitGesture,
  edit,
  initialState,
  openLayout,
  prefer,
  previewGesture,
  select,
  session,
  undo,
} from '../../src/session/session.ts';
import { sample } from '../storage/sample.ts';

const mic = (id: string): Mic => ({
  id,
  name: id,
  micClass: 'compact-dynamic',
  hears: [],
  mount: { kind: 'plateOnDeck', x: 0, y: 0, turn: 0 },
  input: null,
});
const zoneOf = (id: string, height = 100): ForbiddenZone => ({
  mic: id,
  height,
  cell: 20,
  rings: [],
});
const zone = () => session.getState().zone;
const renamed =
  (id: string, name: string) =>
  (layout: Layout): Layout => ({
    ...layout,
    mics: layout.mics.map((one) => (one.id === id ? { ...one, name } : one)),
  });

const questions: ZoneQuestion[] = [];
/** Computers that were started, and whether they were ended. */
const computers: { hear(answer: ZoneAnswer): void; isEnded: boolean }[] = [];
const lastToken = () => questions.at(-1)?.token ?? 0;
const answer = (given: ZoneAnswer) => computers.at(-1)?.hear(given);

// One for all tests, as there is one for the page: it hears the one session.
new ZoneKeeper((hear) => {
  const computer = { hear, isEnded: false };
  computers.push(computer);
  return {
    ask: (question) => questions.push(question),
    end: () => {
      computer.isEnded = true;
    },
  };
});

beforeEach(() => {
  vi.useFakeTimers();
  openLayout({ ...sample('one'), mics: [mic('a'), mic('b')] });
});
afterEach(() => {
  answer({ token: lastToken(), zone: null });
  session.setState(initialState);
  questions.length = 0;
  vi.useRealTimers();
});

it('asks at once for the mic that is selected, and shows the answer', () => {
  select({ kind: 'mic', id: 'a' });
  expect(questions).toMatchObject([{ mic: 'a', layout: session.getState().open?.layout }]);
  expect(zone()).toBeNull();
  answer({ token: lastToken(), zone: zoneOf('a') });
  expect(zone()).toEqual(zoneOf('a'));
});

it('asks nothing for other things, without a selection, or when zones are not shown', () => {
  select({ kind: 'piece', id: 'throne' });
  select(null);
  prefer({ showZone: false });
  select({ kind: 'mic', id: 'a' });
  select({ kind: 'mic', id: 'gone' });
  expect(questions).toEqual([]);
  select({ kind: 'mic', id: 'a' });
  prefer({ showZone: true });
  expect(questions).toHaveLength(1);
});

it('Z1 shows no zone of another mic', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  select({ kind: 'mic', id: 'b' });
  expect(zone()).toBeNull();
  answer({ token: lastToken(), zone: zoneOf('b') });
  select({ kind: 'piece', id: 'throne' });
  expect(zone()).toBeNull();
});

it('Z1 keeps the zone of the same mic until the new one is there', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a', 100) });
  edit('Rename', renamed('a', 'moved'));
  expect(zone()).toEqual(zoneOf('a', 100));
  answer({ token: lastToken(), zone: zoneOf('a', 200) });
  expect(zone()).toEqual(zoneOf('a', 200));
});

it('Z1 selecting the same mic again shows its zone without asking', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  select({ kind: 'mic', id: 'a' });
  expect(zone()).toEqual(zoneOf('a'));
  expect(questions).toHaveLength(1);
});

it('Z1 a mic that is gone has no zone', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  edit('Delete', (layout) => ({ ...layout, mics: layout.mics.slice(1) }));
  expect(zone()).toBeNull();
  undo();
  expect(questions.at(-1)).toMatchObject({ mic: 'a' });
});

it('Z2 asks after 80 ms of rest during a gesture', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: null });
  beginGesture('Move');
  for (let step = 0; step < 20; step++) {
    previewGesture(renamed('a', `step ${step}`));
    vi.advanceTimersByTime(79);
  }
  expect(questions).toHaveLength(1);
  vi.advanceTimersByTime(1);
  expect(questions).toHaveLength(2);
  expect(questions[1]?.layout.mics[0]?.name).toBe('step 19');
  commitGesture();
  expect(questions).toHaveLength(2);
});

it('Z3 a new question ends the work on the last', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a', 1) });
  const [before] = computers.slice(-1);
  edit('Rename', renamed('a', 'second'));
  expect(before?.isEnded).toBe(false);
  edit('Rename', renamed('a', 'third'));
  expect(before?.isEnded).toBe(true);
  expect(computers.at(-1)).not.toBe(before);
  before?.hear({ token: questions[1]?.token ?? 0, zone: zoneOf('a', 2) });
  expect(zone()).toEqual(zoneOf('a', 1));
  answer({ token: lastToken(), zone: zoneOf('a', 3) });
  expect(zone()).toEqual(zoneOf('a', 3));
  expect(questions.map(({ layout }) => layout.mics[0]?.name)).toEqual(['a', 'second', 'third']);
});

it('Z4 drops an answer that comes when something else is wanted', () => {
  select({ kind: 'mic', id: 'a' });
  const token = lastToken();
  select(null);
  answer({ token, zone: zoneOf('a') });
  expect(zone()).toBeNull();
  select({ kind: 'mic', id: 'a' });
  expect(questions).toHaveLength(2);
  beginGesture('Move');
  previewGesture(renamed('a', 'moved'));
  answer({ token: lastToken(), zone: zoneOf('a') });
  expect(zone()).toBeNull();
  vi.advanceTimersByTime(80);
  answer({ token: lastToken(), zone: zoneOf('a', 2) });
  expect(zone()).toEqual(zoneOf('a', 2));
});

it('Z5 asks nothing when what changed can’t change the zone', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  edit('Name', (layout) => ({ ...layout, name: 'Other' }));
  edit('Box', (layout) => ({ ...layout, box: { ...layout.box, x: 5 } }));
  edit('Rename', renamed('b', 'other'));
  expect(questions).toHaveLength(1);
  expect(zone()).toEqual(zoneOf('a'));
  edit('Player', (layout) => ({ ...layout, player: { ...layout.player, stature: 1800 } }));
  expect(questions).toHaveLength(2);
});
