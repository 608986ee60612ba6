import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { BoxAnswer, BoxQuestion } from '../../src/app/boxQuestion.ts';
import { BoxSpotKeeper } from '../../src/app/boxSpotKeeper.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { moveBox, setBox, setCabling } from '../../src/layout/edit/stage.ts';
import { boxSearch } from '../../src/session/boxSearch.ts';
import { edit, initialState, openLayout, session, undo } from '../../src/session/session.ts';
import { standInComputers } from './computers.ts';

const current = () => boxSearch.getState().current;
const spots = { along: [], byCable: [], byLongest: [] };

/** A keeper with computers that answer when they are told to. */
function keeping() {
  const { start, ...stage } = standInComputers<BoxQuestion, BoxAnswer>();
  const keeper = new BoxSpotKeeper(start);
  const token = () => stage.asked()?.token ?? 0;
  return {
    ...stage,
    keeper,
    token,
    found: () => stage.answer({ token: token(), kind: 'found', spots }),
  };
}

beforeEach(() => openLayout(STARTING_KITS[0]?.make('kit') ?? null));
afterEach(() => {
  openLayout(null);
  session.setState(initialState);
  boxSearch.setState({ current: null, by: 'cable' });
});

describe('the search for box spots', () => {
  it('says how far it has come, then what it found', () => {
    const { keeper, answer, token, found } = keeping();
    keeper.find();
    expect(current()).toMatchObject({ kind: 'working', done: 0 });
    answer({ token: token(), kind: 'progress', done: 7, of: 40 });
    expect(current()).toMatchObject({ kind: 'working', done: 7, of: 40 });
    found();
    expect(current()).toMatchObject({ kind: 'found', spots });
  });

  it('E1: stopped, its computer ends; a new search ends the work on the last', () => {
    const { keeper, computers } = keeping();
    keeper.find();
    keeper.stop();
    expect([computers[0]?.ended, current()]).toEqual([true, null]);
    keeper.find();
    keeper.find();
    expect(computers.map(({ ended }) => ended)).toEqual([true, true, false]);
  });

  it('E1: a computer that has answered is asked again', () => {
    const { keeper, computers, found } = keeping();
    keeper.find();
    found();
    keeper.find();
    expect(computers.map(({ questions }) => questions.length)).toEqual([2]);
  });

  it('E2: the box may move, back and forth', () => {
    const { keeper, found } = keeping();
    keeper.find();
    found();
    edit('Move the box', (from) => moveBox(from, { x: 100, y: 200, turn: 90 }));
    expect(current()).toMatchObject({ kind: 'found' });
    undo();
    expect(current()).toMatchObject({ kind: 'found' });
  });

  it.each([
    ['a piece', (l) => movePiece(l, 'snare', { x: 10, y: 400 })],
    ['the number of inputs', (l) => setBox(l, { inputs: 24 })],
    ['the loops', (l) => setCabling(l, { loopAtBox: 900 })],
  ] satisfies [string, Parameters<typeof edit>[1]][])(
    'E2: a change of %s ends it, working or found',
    (_, change) => {
      const { keeper, computers, found } = keeping();
      keeper.find();
      found();
      edit('Change', change);
      expect(current()).toBeNull();
      undo();
      keeper.find();
      edit('Change', change);
      expect([current(), computers.at(-1)?.ended]).toEqual([null, true]);
    },
  );

  it('E3: an answer to another question is dropped', () => {
    const { keeper, answer, token } = keeping();
    keeper.find();
    answer({ token: token() - 1, kind: 'found', spots });
    expect(current()).toMatchObject({ kind: 'working' });
    answer({ token: token(), kind: 'failed', reason: 'out of memory' });
    expect(current()).toMatchObject({ kind: 'failed', reason: 'out of memory' });
    keeper.stop();
    answer({ token: token(), kind: 'found', spots });
    expect(current()).toBeNull();
  });

  it('needs an open layout', () => {
    const { keeper, computers } = keeping();
    openLayout(null);
    keeper.find();
    expect([current(), computers]).toEqual([null, []]);
  });
});
