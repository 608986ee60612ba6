import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NeedKeeper } from '../../src/app/needKeeper.ts';
import type { NeedAnswer } from '../../src/app/needQuestion.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { LibraryRow } from '../../src/session/library.ts';
import { needOf, rowNeeds } from '../../src/session/rowNeeds.ts';
import { edit, initialState, openLayout, session } from '../../src/session/session.ts';
import { box } from './box.ts';
import { standInComputers } from './computers.ts';

function kit(id: string): Layout {
  const found = STARTING_KITS.find(({ key }) => key === 'five-piece-one-rack')?.make(id);
  if (!found) throw new Error('expected the five-piece');
  return found;
}

const row = (id: string, changedAt: number): LibraryRow => ({
  ...{ id, changedAt, name: id, venue: '', date: null, player: '', pieces: 8, mics: 8 },
  ...{ picture: '', signOff: 'none', otherLines: 0, favourite: false, archived: false, tags: [] },
});

/** A keeper of these layouts, each stored at its moment. */
function keeping(stored: Readonly<Record<string, number>>, kept = box()) {
  const { start, ...stage } = standInComputers<Layout, NeedAnswer | null>();
  const make = (version = 'one') =>
    new NeedKeeper({
      load: async (id) =>
        stored[id] === undefined
          ? { ok: false, kind: 'missing' }
          : { ok: true, layout: kit(id), revision: 1, at: stored[id] },
      start,
      storage: () => kept,
      version,
    });
  make();
  return { ...stage, make, kept };
}

const solveOf = (id: string, changedAt: number) =>
  needOf(rowNeeds.getState().known, { id, changedAt })?.solve;
const rest = () => vi.advanceTimersByTimeAsync(2000);

beforeEach(() => {
  vi.useFakeTimers();
  session.setState(initialState);
});
afterEach(() => {
  openLayout(null);
  session.setState(initialState);
  rowNeeds.setState({ known: new Map() });
  vi.useRealTimers();
});

describe('what is to solve in the layouts of the list', () => {
  it('Q1, Q3: rows are looked through at rest, one after the other, the last changed first, each once', async () => {
    const { asked, answer, computers } = keeping({ old: 10, new: 20 });
    session.setState({ library: [row('old', 10), row('new', 20)] });
    expect(computers).toEqual([]);
    await rest();
    expect(asked()?.id).toBe('new');
    answer({ solve: 2, look: 4, signOff: 'none' });
    expect(needOf(rowNeeds.getState().known, { id: 'new', changedAt: 20 })).toMatchObject({
      solve: 2,
      look: 4,
    });
    expect(solveOf('new', 21)).toBeUndefined();
    await rest();
    expect(asked()?.id).toBe('old');
    answer({ solve: 0, look: 4, signOff: 'stale' });
    await rest();
    expect(computers.map(({ questions, ended }) => [questions.length, ended])).toEqual([[2, true]]);
  });

  it('Q3: a layout that is opened ends the work at once, and nothing begins while it is open', async () => {
    const { computers, answer } = keeping({ a: 10, b: 9 });
    session.setState({ library: [row('a', 10), row('b', 9)] });
    await rest();
    openLayout(kit('b'));
    expect(computers[0]?.ended).toBe(true);
    answer({ solve: 7, look: 4, signOff: 'none' });
    await rest();
    expect([computers.length, solveOf('a', 10)]).toEqual([1, undefined]);
  });

  it('Q2: a layout that is left tells by its own report, once it is saved', () => {
    keeping({});
    const sunk = (layout: Layout) => {
      const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
      return clip ? changeClip(layout, clip.id, { height: 5, pitch: 20, reach: 60 }) : layout;
    };
    openLayout(kit('a'));
    session.setState({ saving: { kind: 'saved', at: 30 } });
    edit('Sink it', sunk);
    session.setState({ saving: { kind: 'saving' } });
    openLayout(null);
    expect(solveOf('a', 30)).toBeUndefined();
    openLayout(sunk(kit('a')));
    session.setState({ saving: { kind: 'saved', at: 40 } });
    session.setState({ saving: null });
    openLayout(null);
    expect(solveOf('a', 40)).toBe(1);
  });

  it('Q4: what cannot be read or is another by now is passed over', async () => {
    const { computers, asked, answer } = keeping({ moved: 99, bad: 5 });
    session.setState({ library: [row('gone', 30), row('moved', 20), row('bad', 5)] });
    for (let turn = 0; turn < 3; turn += 1) await rest();
    expect(asked()?.id).toBe('bad');
    answer(null);
    await rest();
    expect(computers.map(({ questions }) => questions.length)).toEqual([1]);
    expect(rowNeeds.getState().known.size).toBe(0);
  });

  it('Q1: it is kept for the next start of the same version of the app, for no other', async () => {
    const { answer, make } = keeping({ a: 10 });
    session.setState({ library: [row('a', 10)] });
    await rest();
    answer({ solve: 3, look: 4, signOff: 'none' });
    rowNeeds.setState({ known: new Map() });
    make('two');
    expect(solveOf('a', 10)).toBeUndefined();
    make('one');
    expect(solveOf('a', 10)).toBe(3);
  });
});
