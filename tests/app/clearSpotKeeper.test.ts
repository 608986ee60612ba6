import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ClearAnswer, ClearQuestion, Progress } from '../../src/app/clearQuestion.ts';
import { ClearSpotKeeper } from '../../src/app/clearSpotKeeper.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { addMic, changeClip } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { ClipMount } from '../../src/layout/mics/mount.ts';
import { clearing } from '../../src/session/clearing.ts';
import {
  beginGesture,
  edit,
  initialState,
  leaveOffer,
  openLayout,
  previewGesture,
  session,
  takeOffer,
  undo,
} from '../../src/session/session.ts';
import { standInComputers } from './computers.ts';

type Found = NonNullable<Progress['soFar']>;
const RACK = 'mic-rack-1';
const current = () => clearing.getState().current;
const layout = (): Layout => {
  const open = session.getState().open?.layout;
  if (!open) throw new Error('a layout is open');
  return open;
};
const clipOf = (from: Layout): ClipMount => {
  const mount = from.mics.find(({ id }) => id === RACK)?.mount;
  if (mount?.kind !== 'clip') throw new Error('the rack tom has a clip');
  return mount;
};
const turned = (angle: number) => (from: Layout) => changeClip(from, RACK, { angle });

/** A keeper with computers that answer when they are told to. */
function keeping() {
  const { start, ...stage } = standInComputers<ClearQuestion, ClearAnswer>();
  const keeper = new ClearSpotKeeper(start);
  return {
    ...stage,
    keeper,
    find: () => keeper.find({ mics: [RACK], whole: false, label: 'Clear spot of Rack 1' }),
    found: (angle: number, proven = true) =>
      stage.answer({
        token: stage.asked()?.token ?? 0,
        kind: 'found',
        moved: [{ mic: RACK, mount: { ...clipOf(layout()), angle }, proven }],
        left: [],
      }),
  };
}

beforeEach(() => {
  const kit = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks');
  openLayout(kit?.make('kit') ?? null);
});
afterEach(() => {
  openLayout(null);
  clearing.setState({ current: null });
  session.setState(initialState);
});

describe('clear spots', () => {
  it('P3: what was found is offered, and is one step once it is taken', () => {
    const { find, found, asked } = keeping();
    const before = layout();
    find();
    expect(asked()).toMatchObject({ layout: before, mics: [RACK] });
    expect(current()).toMatchObject({ kind: 'working', done: 0 });
    found(123);
    expect(current()).toMatchObject({ kind: 'offered', moved: [RACK], unproven: [], left: [] });
    expect(clipOf(layout()).angle).toBe(123);
    expect(session.getState().history.past).toEqual([]);
    takeOffer();
    expect(current()).toBeNull();
    expect(session.getState().history.past.map(({ label }) => label)).toEqual([
      'Clear spot of Rack 1',
    ]);
    undo();
    expect(layout()).toBe(before);
  });

  it('P3: a spot that is not known to be the nearest is told apart', () => {
    const { find, found } = keeping();
    find();
    found(123, false);
    expect(current()).toMatchObject({ kind: 'offered', moved: [RACK], unproven: [RACK] });
  });

  it('P3: a new search leaves what is on offer, and what it finds is offered in turn', () => {
    const { keeper, find, found, asked } = keeping();
    const before = layout();
    find();
    found(123);
    keeper.find({ mics: [RACK], whole: true, label: 'Clear all mics' });
    expect(layout()).toBe(before);
    expect(session.getState().gesture).toBeNull();
    expect(asked()?.layout).toBe(before);
    expect(current()).toMatchObject({ kind: 'working', request: { whole: true } });
    found(77);
    expect(current()).toMatchObject({ kind: 'offered', moved: [RACK], request: { whole: true } });
    expect(clipOf(layout()).angle).toBe(77);
    leaveOffer();
    expect(layout()).toBe(before);
  });

  it('P3: left, it is gone', () => {
    const { find, found } = keeping();
    const before = layout();
    find();
    found(123);
    leaveOffer();
    expect([layout() === before, current()]).toEqual([true, null]);
  });

  it('P3: anything else that is done leaves it', () => {
    const { find, found } = keeping();
    find();
    found(123);
    edit('turn', turned(100));
    expect(current()).toBeNull();
    expect(clipOf(layout()).angle).toBe(100);
    expect(session.getState().history.past).toHaveLength(1);
  });

  it('P1: a new search ends the work on the last', () => {
    const { find, computers } = keeping();
    find();
    find();
    expect(computers.map(({ ended }) => ended)).toEqual([true, false]);
    expect(computers.map(({ questions }) => questions.length)).toEqual([1, 1]);
  });

  it('P1: a computer that has answered is asked again', () => {
    const { find, found, computers } = keeping();
    find();
    found(123);
    takeOffer();
    find();
    expect(computers).toHaveLength(1);
  });

  it('P2: a change of the layout ends the search; what is answered all the same is dropped', () => {
    const { find, asked, answer, computers } = keeping();
    find();
    const token = asked()?.token ?? 0;
    beginGesture('drag');
    expect(current()?.kind).toBe('working');
    previewGesture(turned(100));
    expect(current()).toBeNull();
    expect(computers[0]?.ended).toBe(true);
    const mount = { ...clipOf(layout()), angle: 5 };
    answer({ token, kind: 'found', moved: [{ mic: RACK, mount, proven: true }], left: [] });
    expect(clipOf(layout()).angle).toBe(100);
    expect(current()).toBeNull();
  });

  it('P2: stopped, closed or answered late, nothing comes of it', () => {
    const { find, asked, answer, keeper, computers } = keeping();
    const before = layout();
    find();
    const token = asked()?.token ?? 0;
    answer({ token, kind: 'progress', done: 1, beyond: 42, spent: 0.5 });
    expect(current()).toMatchObject({ kind: 'working', done: 1, beyond: 42, spent: 0.5 });
    keeper.stop();
    expect([current(), computers[0]?.ended]).toEqual([null, true]);
    answer({ token, kind: 'progress', done: 2, beyond: 0, spent: 0 });
    expect(current()).toBeNull();
    expect(layout()).toBe(before);
    find();
    openLayout(null);
    expect(current()).toBeNull();
    find();
    expect(current()).toBeNull();
  });

  it('P4: that nothing was found is said until anything changes', () => {
    const { find, asked, answer, keeper } = keeping();
    const left = [{ mic: RACK, why: 'none-found' as const }];
    const none = () => {
      find();
      answer({ token: asked()?.token ?? 0, kind: 'found', moved: [], left });
    };
    none();
    expect(current()).toMatchObject({ kind: 'none', left });
    session.setState({ selection: { kind: 'box' } });
    expect(current()?.kind).toBe('none');
    edit('turn', turned(100));
    expect(current()).toBeNull();
    none();
    keeper.stop();
    expect(current()).toBeNull();
  });

  it('P5: ended early, what was found is offered and the rest is said not to be looked for', () => {
    const { keeper, asked, answer, computers } = keeping();
    // All of them are tight then.
    edit('Margin', (from) => ({ ...from, margin: 300 }));
    const findAll = () =>
      keeper.find({ mics: [RACK, 'mic-rack-2', 'mic-snare'], whole: true, label: 'Clear all' });
    const mount = { ...clipOf(layout()), angle: 123 };
    const tell = (soFar: Found) =>
      answer({ token: asked()?.token ?? 0, kind: 'progress', done: 2, beyond: 0, spent: 0, soFar });
    const left = [{ mic: 'mic-rack-2', why: 'none-found' as const, most: 40 }];
    const rest = [...left, { mic: 'mic-snare', why: 'not-looked' as const }];
    findAll();
    tell({ moved: [{ mic: RACK, mount, proven: true }], left });
    expect(current()).toMatchObject({ kind: 'working', found: 1 });
    // What is told between two mics takes nothing back.
    answer({ token: asked()?.token ?? 0, kind: 'progress', done: 2, beyond: 9, spent: 0.1 });
    keeper.endEarly();
    expect(computers.at(-1)?.ended).toBe(true);
    expect(current()).toMatchObject({ kind: 'offered', moved: [RACK], left: rest });
    expect(clipOf(layout()).angle).toBe(123);
    findAll();
    tell({ moved: [], left });
    keeper.endEarly();
    expect(current()).toMatchObject({
      kind: 'none',
      left: [...rest.slice(0, 1), { mic: RACK }, rest[1]],
    });
    keeper.endEarly();
    expect(current()?.kind).toBe('none');
  });

  it('P5: that a mic is looked for again is told, and that it was not, where the search is ended before', () => {
    const { keeper, asked, answer } = keeping();
    edit('Margin', (from) => ({ ...from, margin: 300 }));
    keeper.find({ mics: ['mic-snare', RACK], whole: true, label: 'Clear all' });
    const token = asked()?.token ?? 0;
    const mount = { ...clipOf(layout()), angle: 123 };
    const moved = [{ mic: RACK, mount, proven: true }];
    const left = [{ mic: 'mic-snare', why: 'not-again' as const }];
    const soFar = { moved, left };
    answer({ token, kind: 'progress', done: 2, beyond: 0, spent: 0, soFar });
    expect(current()).not.toHaveProperty('again');
    answer({ token, kind: 'progress', done: 1, beyond: 9, spent: 0.1, again: 'mic-snare' });
    expect(current()).toMatchObject({ kind: 'working', done: 1, again: 'mic-snare', found: 1 });
    keeper.endEarly();
    expect(current()).toMatchObject({ kind: 'offered', moved: [RACK], left });
  });

  it('P6: what may stay once the rest has moved is not left', () => {
    const { keeper, asked, answer } = keeping();
    const clip = layout().mics.find(({ id }) => id === RACK);
    if (!clip) throw new Error('the rack tom has a mic');
    edit('Add', (from) => addMic(from, { ...clip, input: null }));
    const second = layout().mics.at(-1)?.id ?? '';
    const mount = { ...clipOf(layout()), angle: clipOf(layout()).angle + 40 };
    const moved = [{ mic: second, mount, proven: true }];
    const findBoth = () => keeper.find({ mics: [second, RACK], whole: true, label: 'Clear all' });
    findBoth();
    const left = [{ mic: RACK, why: 'none-found' as const }];
    answer({ token: asked()?.token ?? 0, kind: 'found', moved, left });
    expect(current()).toMatchObject({ kind: 'offered', moved: [second], left: [] });
    findBoth();
    const soFar = { moved, left: [] };
    answer({ token: asked()?.token ?? 0, kind: 'progress', done: 1, beyond: 0, spent: 0, soFar });
    keeper.endEarly();
    expect(current()).toMatchObject({ kind: 'offered', moved: [second], left: [] });
  });

  it('a search that fails says why', () => {
    const { find, asked, answer } = keeping();
    find();
    answer({ token: asked()?.token ?? 0, kind: 'failed', reason: 'no memory' });
    expect(current()).toMatchObject({ kind: 'failed', reason: 'no memory' });
  });
});
