import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { FieldKeeper } from '../../src/app/fieldKeeper.ts';
import type { FieldAnswer, FieldQuestion } from '../../src/app/fieldQuestion.ts';
import { floorRule, ringRule, zoneRule } from '../../src/app/fieldRules.ts';
import { type Change, changeFrom } from '../../src/geometry/changedParts.ts';
import { usualRackTom } from '../../src/layout/catalogue/defaults/usualPieces.ts';
import { changeClip } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { ClipMount } from '../../src/layout/mics/mount.ts';
import type { FloorReport } from '../../src/report/floor.ts';
import type { RingOfMic } from '../../src/report/ring.ts';
import type { ForbiddenZone } from '../../src/report/zone.ts';
import {
  answerBeside,
  beginGesture,
  commitGesture,
  edit,
  initialState,
  openLayout,
  placeGesture,
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

/** What was asked of one kind of field, the computers that were started for it, and whether they were ended. */
function asking<Kind extends 'zone' | 'ring' | 'floor'>() {
  const questions: FieldQuestion[] = [];
  const computers: { hear(answer: FieldAnswer<Kind>): void; isEnded: boolean }[] = [];
  return {
    questions,
    computers,
    lastToken: () => questions.at(-1)?.token ?? 0,
    answer: (token: number, field: FieldAnswer<Kind>['field']) =>
      computers.at(-1)?.hear({ token, field, fault: null }),
    start(hear: (answer: FieldAnswer<Kind>) => void) {
      const computer = { hear, isEnded: false };
      computers.push(computer);
      return {
        ask: (question: FieldQuestion) => questions.push(question),
        end: () => {
          computer.isEnded = true;
        },
      };
    },
  };
}

// One of each for all tests, as there is one for the page: they hear the one session.
const zones = asking<'zone'>();
const rings = asking<'ring'>();
const floors = asking<'floor'>();
new FieldKeeper(zoneRule, zones.start);
new FieldKeeper(ringRule, rings.start);
new FieldKeeper(floorRule, floors.start);
const { questions, computers, lastToken } = zones;
const answer = ({ token, zone }: { token: number; zone: ForbiddenZone | null }) =>
  zones.answer(token, zone);

beforeEach(() => {
  vi.useFakeTimers();
  openLayout({ ...sample('one'), mics: [mic('a'), mic('b')] });
});
afterEach(() => {
  select(null);
  for (const kind of [zones, rings, floors]) kind.answer(kind.lastToken(), null);
  session.setState(initialState);
  for (const kind of [zones, rings, floors]) kind.questions.length = 0;
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

it('K1 shows no zone of another mic', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  select({ kind: 'mic', id: 'b' });
  expect(zone()).toBeNull();
  answer({ token: lastToken(), zone: zoneOf('b') });
  select({ kind: 'piece', id: 'throne' });
  expect(zone()).toBeNull();
});

it('K1 keeps the zone of the same mic until the new one is there', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a', 100) });
  edit('Rename', renamed('a', 'moved'));
  expect(zone()).toEqual(zoneOf('a', 100));
  answer({ token: lastToken(), zone: zoneOf('a', 200) });
  expect(zone()).toEqual(zoneOf('a', 200));
});

it('K8 the zone of before a change is marked as that, until the new one is there', () => {
  const isOld = () => session.getState().zoneIsOld;
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a', 100) });
  expect(isOld()).toBe(false);
  beginGesture('Drag');
  previewGesture(renamed('a', 'moved'));
  expect(isOld()).toBe(true);
  commitGesture();
  vi.advanceTimersByTime(80);
  expect(isOld()).toBe(true);
  answer({ token: lastToken(), zone: zoneOf('a', 200) });
  expect(isOld()).toBe(false);
});

it('K1 selecting the same mic again shows its zone without asking', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  select({ kind: 'mic', id: 'a' });
  expect(zone()).toEqual(zoneOf('a'));
  expect(questions).toHaveLength(1);
});

it('K1 a mic that is gone has no zone', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a') });
  edit('Delete', (layout) => ({ ...layout, mics: layout.mics.slice(1) }));
  expect(zone()).toBeNull();
  undo();
  expect(questions.at(-1)).toMatchObject({ mic: 'a' });
});

it('K2 asks after 80 ms of rest during a gesture', () => {
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

it('K3 a new question ends the work on the last', () => {
  select({ kind: 'mic', id: 'a' });
  answer({ token: lastToken(), zone: zoneOf('a', 1) });
  const [before] = computers.slice(-1);
  edit('Rename', renamed('a', 'second'));
  expect(before?.isEnded).toBe(false);
  edit('Rename', renamed('a', 'third'));
  expect(before?.isEnded).toBe(true);
  expect(computers.at(-1)).not.toBe(before);
  before?.hear({ token: questions[1]?.token ?? 0, field: zoneOf('a', 2), fault: null });
  expect(zone()).toEqual(zoneOf('a', 1));
  answer({ token: lastToken(), zone: zoneOf('a', 3) });
  expect(zone()).toEqual(zoneOf('a', 3));
  expect(questions.map(({ layout }) => layout.mics[0]?.name)).toEqual(['a', 'second', 'third']);
});

it('K4 drops an answer that comes when something else is wanted', () => {
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

it('K5 asks nothing when what changed can’t change the zone', () => {
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

const clip = (angle: number): ClipMount => ({
  kind: 'clip',
  drum: 'tom',
  material: 'rubber',
  angle,
  reach: 30,
  height: 40,
  pitch: 30,
});
const onRim = (id: string, angle: number): Mic => ({ ...mic(id), mount: clip(angle) });
const tom = { ...usualRackTom('tom'), x: 0, y: 700 };
const withClip = () => {
  const layout = sample('two');
  openLayout({ ...layout, pieces: [...layout.pieces, tom], mics: [onRim('a', 90), mic('b')] });
  select({ kind: 'mic', id: 'a' });
};
const ringOf = (id: string, split: number): RingOfMic => ({
  mic: id,
  drum: 'tom',
  reach: 30,
  arcs: [
    { verdict: 'clear', from: 0, to: split },
    { verdict: 'struck', from: split, to: 360 },
  ],
});
const ring = () => session.getState().ring;
const raised = (height: number) => (layout: Layout) => changeClip(layout, 'a', { height });

it('asks for the ring of a clip mic only', () => {
  withClip();
  expect(rings.questions).toMatchObject([{ kind: 'ring', mic: 'a' }]);
  rings.answer(rings.lastToken(), ringOf('a', 100));
  expect(ring()).toEqual(ringOf('a', 100));
  select({ kind: 'mic', id: 'b' });
  expect(ring()).toBeNull();
  expect(rings.questions).toHaveLength(1);
});

it('asks for the ring of the mic that a selected drum has not got yet, and again when the mics change', () => {
  openLayout({ ...sample('two'), pieces: [tom], mics: [mic('b')] });
  select({ kind: 'piece', id: 'tom' });
  expect(rings.questions).toMatchObject([{ kind: 'ring', mic: null, drum: 'tom' }]);
  const place = {
    mic: 'new',
    angle: 0,
    verdict: 'clear',
    clearance: 50,
    tip: { x: 0, y: 0, z: 0 },
  } as const;
  const planned: RingOfMic = {
    ...ringOf('new', 100),
    planned: { mic: { ...onRim('new', 0), mount: clip(0) }, place, hasWay: true },
  };
  rings.answer(rings.lastToken(), planned);
  expect(ring()).toEqual(planned);
  edit('rename', (layout) => ({ ...layout, name: 'Other' }));
  expect(rings.questions).toHaveLength(1);
  edit('add', (layout) => ({ ...layout, mics: [...layout.mics, mic('third')] }));
  expect(rings.questions).toHaveLength(2);
  expect(ring()).toEqual(planned);
  edit('clip', (layout) => ({ ...layout, mics: [...layout.mics, onRim('a', 90)] }));
  expect(ring()).toBeNull();
  expect(rings.questions).toHaveLength(2);
  rings.answer(rings.lastToken(), planned);
  expect(ring()).toBeNull();
  expect(rings.questions.at(-1)).toMatchObject({ mic: 'a' });
});

it('K5 going round the rim asks for no other ring', () => {
  withClip();
  rings.answer(rings.lastToken(), ringOf('a', 100));
  edit('Move', (layout) => changeClip(layout, 'a', { angle: 200 }));
  edit('Name', (layout) => ({ ...layout, name: 'Other' }));
  expect(rings.questions).toHaveLength(1);
  expect(ring()).toEqual(ringOf('a', 100));
  edit('Margin', (layout) => ({ ...layout, margin: 80 }));
  expect(rings.questions).toHaveLength(2);
});

it('K6 the ring follows a drag from answer to answer, the newest question after each', () => {
  withClip();
  rings.answer(rings.lastToken(), ringOf('a', 100));
  beginGesture('Move');
  for (const height of [50, 60, 70]) previewGesture(raised(height));
  expect(rings.questions).toHaveLength(2);
  expect(rings.computers.every(({ isEnded }) => !isEnded)).toBe(true);
  rings.answer(rings.lastToken(), ringOf('a', 110));
  vi.advanceTimersByTime(34);
  expect(ring()).toEqual(ringOf('a', 110));
  expect(rings.questions).toHaveLength(3);
  expect(rings.questions[2]?.layout.mics[0]).toMatchObject({ mount: { height: 70 } });
  rings.answer(rings.lastToken(), ringOf('a', 120));
  vi.advanceTimersByTime(34);
  expect(ring()).toEqual(ringOf('a', 120));
  expect(rings.questions).toHaveLength(3);
  commitGesture();
  expect(rings.questions).toHaveLength(3);
});

it('K7 a ring that comes in a gesture is shown with the next change, at rest 34 ms later', () => {
  withClip();
  rings.answer(rings.lastToken(), ringOf('a', 100));
  beginGesture('Move');
  previewGesture(raised(50));
  rings.answer(rings.lastToken(), ringOf('a', 110));
  expect(ring()).toEqual(ringOf('a', 100));
  previewGesture(raised(60));
  expect(ring()).toEqual(ringOf('a', 110));
  rings.answer(rings.lastToken(), ringOf('a', 120));
  vi.advanceTimersByTime(33);
  expect(ring()).toEqual(ringOf('a', 110));
  vi.advanceTimersByTime(1);
  expect(ring()).toEqual(ringOf('a', 120));
});

const answersOf = () => {
  const { open } = session.getState();
  if (!open) throw new Error('expected an open layout');
  const { rig: _, ...answers } = open.report;
  return answers;
};

it('K7 in a drag a ring waits for answers that the drawing takes over, for one change at most', () => {
  const told: ((change: Change | null) => void)[] = [];
  answerBeside({ ask: (_, hear) => told.push(hear) });
  withClip();
  told.at(-1)?.(changeFrom(null, answersOf()));
  rings.answer(rings.lastToken(), ringOf('a', 100));
  beginGesture('Move');
  const place = (height: number) => placeGesture(raised(height), () => undefined);
  place(50);
  rings.answer(rings.lastToken(), ringOf('a', 110));
  place(60);
  expect(ring()).toEqual(ringOf('a', 100));
  place(70);
  expect(ring()).toEqual(ringOf('a', 110));
  place(80);
  told.at(-1)?.(changeFrom(answersOf(), { ...answersOf(), runs: [] }));
  rings.answer(rings.lastToken(), ringOf('a', 120));
  place(90);
  expect(ring()).toEqual(ringOf('a', 120));
  rings.answer(rings.lastToken(), ringOf('a', 130));
  place(91);
  rings.answer(rings.lastToken(), ringOf('a', 140));
  vi.advanceTimersByTime(33);
  expect(ring()).toEqual(ringOf('a', 120));
  vi.advanceTimersByTime(1);
  expect(ring()).toEqual(ringOf('a', 140));
  commitGesture();
  answerBeside(null);
});

it('K1, K7 a ring that waits is not shown of another mic; the end of the gesture shows it', () => {
  withClip();
  rings.answer(rings.lastToken(), ringOf('a', 100));
  beginGesture('Move');
  previewGesture(raised(50));
  rings.answer(rings.lastToken(), ringOf('a', 110));
  commitGesture();
  expect(ring()).toEqual(ringOf('a', 110));
  beginGesture('Move');
  previewGesture(raised(70));
  rings.answer(rings.lastToken(), ringOf('a', 120));
  select({ kind: 'mic', id: 'b' });
  vi.advanceTimersByTime(34);
  expect(ring()).toBeNull();
  commitGesture();
});

it('K4, K6 an answer about another mic is dropped, and the question that waited is asked', () => {
  withClip();
  edit('Clip', (layout) => ({ ...layout, mics: [onRim('a', 90), onRim('b', 10)] }));
  select({ kind: 'mic', id: 'b' });
  expect(rings.questions).toHaveLength(1);
  rings.answer(rings.lastToken(), ringOf('a', 100));
  expect(ring()).toBeNull();
  expect(rings.questions[1]).toMatchObject({ mic: 'b' });
  rings.answer(rings.lastToken(), ringOf('b', 100));
  expect(ring()).toEqual(ringOf('b', 100));
});

it('asks for the stick floor while it is shown, again when kit, player or units change', () => {
  const heights = new Float32Array([500]);
  const spots = { left: 3, bottom: 3, columns: 1, rows: 1, heights };
  const field: FloorReport = { lowest: 500, step: 100, contours: [], field: spots };
  expect(floors.questions).toEqual([]);
  prefer({ showFloor: true });
  expect(floors.questions).toMatchObject([{ kind: 'floor', mic: null }]);
  floors.answer(floors.lastToken(), field);
  select({ kind: 'mic', id: 'a' });
  edit('Rename', renamed('a', 'other'));
  expect(session.getState().floor).toEqual(field);
  expect(floors.questions).toHaveLength(1);
  edit('Units', (layout) => ({ ...layout, units: 'in' }));
  expect(floors.questions).toHaveLength(2);
  expect(session.getState().floor).toEqual(field);
  prefer({ showFloor: false });
  expect(session.getState().floor).toBeNull();
});
