import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Autosave } from '../../src/app/autosave.ts';
import type { Layout } from '../../src/layout/layout.ts';
import {
  beginGesture,
  beginOffer,
  cancelGesture,
  commitGesture,
  edit,
  openLayout,
  previewGesture,
  session,
  takeOffer,
  undo,
} from '../../src/session/session.ts';
import { memoryStorage } from '../../src/storage/memory.ts';
import { NOTHING_STORED, type SaveOutcome, type StoragePort } from '../../src/storage/port.ts';
import { sample } from '../storage/sample.ts';

const quota = { ok: false, kind: 'refused', reason: 'quota', detail: 'full' } as const;
const rename = (name: string) => (layout: Layout) => ({ ...layout, name });
const saving = () => session.getState().saving;

let last: Autosave | undefined;

/** An autosave on a storage that answers when it is told to, or at once. */
async function opened({ unreliable = null as string | null, slow = false } = {}) {
  const inside = memoryStorage(Date.now);
  await inside.save(sample('one'), NOTHING_STORED);
  const names: string[] = [];
  const waiting: (() => void)[] = [];
  let answer: SaveOutcome | null = null;
  const storage: StoragePort = {
    ...inside,
    async save(layout, expected) {
      names.push(layout.name);
      if (slow) await new Promise<void>((go) => waiting.push(go));
      return answer ?? inside.save(layout, expected);
    },
  };
  const onSaved = vi.fn();
  const onCleared = vi.fn();
  const autosave = new Autosave({ storage, unreliable, onSaved, onCleared });
  last = autosave;
  const layout = sample('one');
  openLayout(layout);
  autosave.track(layout, 1, 5000);
  return {
    autosave,
    inside,
    names,
    onSaved,
    onCleared,
    /** Lets the save that is under way be answered. */
    async release() {
      waiting.shift()?.();
      await vi.advanceTimersByTimeAsync(0);
    },
    answerWith(outcome: SaveOutcome | null) {
      answer = outcome;
    },
  };
}

beforeEach(() => {
  vi.useFakeTimers({ now: 10_000 });
});
afterEach(() => {
  openLayout(null);
  last?.untrack();
  vi.useRealTimers();
});

describe('Autosave', () => {
  it('shows what is stored as saved, when it was', async () => {
    await opened();
    expect(saving()).toEqual({ kind: 'saved', at: 5000 });
  });

  it('A1 saves after 300 ms of rest', async () => {
    const { names, inside } = await opened();
    edit('Rename', rename('A'));
    await vi.advanceTimersByTimeAsync(299);
    expect(names).toEqual([]);
    edit('Rename', rename('B'));
    await vi.advanceTimersByTimeAsync(299);
    expect(names).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(names).toEqual(['B']);
    expect(await inside.load('one')).toMatchObject({ revision: 2, layout: { name: 'B' } });
  });

  it('A1 saves 2 s after the first change when there is no rest', async () => {
    const { names } = await opened();
    for (let step = 0; step < 41; step++) {
      edit('Rename', rename(`Step ${step}`));
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(names).toEqual(['Step 19', 'Step 39']);
  });

  it('A2 saves nothing during a gesture, and at once at its end', async () => {
    const { names } = await opened();
    beginGesture('Move');
    for (let step = 0; step < 50; step++) {
      previewGesture(rename(`Step ${step}`));
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(names).toEqual([]);
    expect(saving()).toEqual({ kind: 'saving' });
    commitGesture();
    await vi.advanceTimersByTimeAsync(0);
    expect(names).toEqual(['Step 49']);
    expect(saving()).toEqual({ kind: 'saved', at: 15_000 });
  });

  it('A4 what stays as it was in every preview of a gesture is not told again', async () => {
    await opened();
    beginGesture('Move');
    previewGesture(rename('First'));
    const told: unknown[] = [];
    const stop = session.subscribe((now, before) => {
      if (now.saving !== before.saving) told.push(now.saving);
    });
    for (let step = 0; step < 9; step++) previewGesture(rename(`Step ${step}`));
    stop();
    expect(told).toEqual([]);
    expect(saving()).toEqual({ kind: 'saving' });
  });

  it('A2 an edit just before a gesture is saved when the gesture starts', async () => {
    const { names } = await opened();
    edit('Rename', rename('Before'));
    beginGesture('Move');
    previewGesture(rename('During'));
    await vi.advanceTimersByTimeAsync(5000);
    expect(names).toEqual(['Before']);
    cancelGesture();
    await vi.advanceTimersByTimeAsync(5000);
    expect(names).toEqual(['Before']);
    expect(saving()?.kind).toBe('saved');
  });

  it('A2 what is half done is not saved when the page is put away in the middle of a gesture', async () => {
    const { autosave, inside, names } = await opened();
    edit('Rename', rename('Before'));
    beginGesture('Move');
    previewGesture(rename('Half way'));
    expect(await autosave.flush()).toBe(true);
    expect(autosave.unstored()).toBeNull();
    expect(saving()).toEqual({ kind: 'saving' });
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Before' } });
    cancelGesture();
    await vi.advanceTimersByTimeAsync(300);
    expect(names).toEqual(['Before']);
    expect(saving()?.kind).toBe('saved');
  });

  it('A3 saves one at a time, the last change after it', async () => {
    const { autosave, names, release } = await opened({ slow: true });
    edit('Rename', rename('A'));
    void autosave.flush();
    edit('Rename', rename('B'));
    void autosave.flush();
    edit('Rename', rename('C'));
    const done = autosave.flush();
    await vi.advanceTimersByTimeAsync(5000);
    expect(names).toEqual(['A']);
    await release();
    expect(names).toEqual(['A', 'C']);
    expect(saving()).toEqual({ kind: 'saving' });
    await release();
    expect(await done).toBe(true);
    expect(names).toEqual(['A', 'C']);
    expect(saving()?.kind).toBe('saved');
  });

  it('A4 shows saving from the change on until the storage has answered', async () => {
    const { release } = await opened({ slow: true });
    edit('Rename', rename('A'));
    expect(saving()).toEqual({ kind: 'saving' });
    await vi.advanceTimersByTimeAsync(60_000);
    expect(saving()).toEqual({ kind: 'saving' });
    await release();
    expect(saving()).toEqual({ kind: 'saved', at: 70_000 });
  });

  it('A4 a change while it is saved is not shown as saved, and is saved in its turn', async () => {
    const { names, release } = await opened({ slow: true });
    edit('Rename', rename('A'));
    await vi.advanceTimersByTimeAsync(300);
    edit('Rename', rename('B'));
    await release();
    expect(saving()).toEqual({ kind: 'saving' });
    await vi.advanceTimersByTimeAsync(300);
    await release();
    expect(names).toEqual(['A', 'B']);
    expect(saving()?.kind).toBe('saved');
  });

  it('A4 back at what is stored there is nothing to save', async () => {
    const { names } = await opened();
    edit('Rename', rename('A'));
    undo();
    expect(saving()).toEqual({ kind: 'saved', at: 5000 });
    await vi.advanceTimersByTimeAsync(5000);
    expect(names).toEqual([]);
  });

  it('what is only offered is no change, and is saved once it is taken', async () => {
    const { names } = await opened();
    beginOffer('Offer', rename('Offered'));
    await vi.advanceTimersByTimeAsync(5000);
    expect(names).toEqual([]);
    expect(saving()).toEqual({ kind: 'saved', at: 5000 });
    takeOffer();
    await vi.advanceTimersByTimeAsync(1);
    expect(names).toEqual(['Offered']);
  });

  it('A4 nothing is called saved where the browser can’t be relied on', async () => {
    const { names, autosave } = await opened({ unreliable: 'plain http' });
    const failed = { kind: 'failed', reason: 'insecure', detail: 'plain http' };
    expect(saving()).toEqual(failed);
    edit('Rename', rename('A'));
    await vi.advanceTimersByTimeAsync(300);
    expect(names).toEqual(['A']);
    expect(saving()).toEqual(failed);
    expect(autosave.wouldLose()).toBe(false);
  });

  it('A5 shows a refusal until a save succeeds, and tries with each change', async () => {
    const { autosave, names, answerWith, onSaved } = await opened();
    answerWith(quota);
    edit('Rename', rename('A'));
    await vi.advanceTimersByTimeAsync(300);
    const failed = { kind: 'failed', reason: 'quota', detail: 'full' };
    expect(saving()).toEqual(failed);
    expect(autosave.wouldLose()).toBe(true);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(names).toEqual(['A']);
    edit('Rename', rename('B'));
    expect(saving()).toEqual(failed);
    await vi.advanceTimersByTimeAsync(300);
    expect(saving()).toEqual(failed);
    expect(onSaved).not.toHaveBeenCalled();
    answerWith(null);
    edit('Rename', rename('C'));
    await vi.advanceTimersByTimeAsync(300);
    expect(names).toEqual(['A', 'B', 'C']);
    expect(saving()?.kind).toBe('saved');
    expect(autosave.wouldLose()).toBe(false);
    expect(onSaved).toHaveBeenCalledOnce();
  });

  it('A6 a conflict stands, and nothing is written any more', async () => {
    const { autosave, inside, names } = await opened();
    await inside.save(sample('one', 'Theirs'), 1);
    edit('Rename', rename('Mine'));
    await vi.advanceTimersByTimeAsync(300);
    expect(saving()).toEqual({ kind: 'conflict' });
    edit('Rename', rename('Mine too'));
    await vi.advanceTimersByTimeAsync(5000);
    expect(await autosave.flush()).toBe(false);
    expect(names).toEqual(['Mine']);
    expect(saving()).toEqual({ kind: 'conflict' });
    expect(session.getState().open?.layout.name).toBe('Mine too');
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Theirs' } });
  });

  it('A7 where the storage was cleared under it, the layout is stored again, and that is no conflict', async () => {
    const { autosave, inside, onCleared } = await opened();
    await inside.remove('one');
    await inside.forget(Number.POSITIVE_INFINITY);
    edit('Rename', rename('Still here'));
    expect(await autosave.flush()).toBe(true);
    expect(saving()?.kind).toBe('saved');
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Still here' } });
    expect(onCleared).toHaveBeenCalledOnce();
    edit('Rename', rename('And on'));
    expect(await autosave.flush()).toBe(true);
    expect(onCleared).toHaveBeenCalledOnce();
  });

  it('A6, A7 one that was removed elsewhere is a conflict still: somebody meant it', async () => {
    const { autosave, inside, onCleared } = await opened();
    await inside.remove('one');
    edit('Rename', rename('Mine'));
    expect(await autosave.flush()).toBe(false);
    expect(saving()).toEqual({ kind: 'conflict' });
    expect(onCleared).not.toHaveBeenCalled();
  });

  it('a layout that is not stored yet is stored as it is opened', async () => {
    const { autosave, names } = await opened();
    autosave.untrack();
    const layout = sample('new', 'New');
    openLayout(layout);
    autosave.track(layout, NOTHING_STORED, null);
    expect(saving()).toEqual({ kind: 'saving' });
    await vi.advanceTimersByTimeAsync(0);
    expect(names).toEqual(['New']);
    expect(saving()?.kind).toBe('saved');
  });

  it('the answer for a layout that was closed meanwhile is not shown for the next', async () => {
    const { autosave, inside, release } = await opened({ slow: true });
    edit('Rename', rename('A'));
    await vi.advanceTimersByTimeAsync(300);
    autosave.untrack();
    const next = sample('two');
    openLayout(next);
    autosave.track(next, 7, 6000);
    await release();
    expect(saving()).toEqual({ kind: 'saved', at: 6000 });
    expect(autosave.tracked()).toMatchObject({ id: 'two', revision: 7 });
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'A' } });
  });
});
