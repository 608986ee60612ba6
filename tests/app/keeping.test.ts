import { afterEach, expect, it, vi } from 'vitest';
import { askOnceWhenThereIsSomething, askToKeep, lookWhetherKept } from '../../src/app/keeping.ts';
import { initialState, session } from '../../src/session/session.ts';

const kept = () => session.getState().kept;

/** A browser that has promised or not, and gives this answer when it is asked. */
function browser(promised: boolean, answer: boolean) {
  const persist = vi.fn(async () => answer);
  vi.stubGlobal('navigator', { storage: { persisted: async () => promised, persist } });
  return persist;
}

afterEach(() => {
  vi.unstubAllGlobals();
  session.setState(initialState);
});

it('looks without asking', async () => {
  const persist = browser(true, true);
  await lookWhetherKept();
  expect(kept()).toBe(true);
  expect(persist).not.toHaveBeenCalled();
});

it('asks, and shows the answer', async () => {
  browser(false, false);
  expect(await askToKeep()).toBe(false);
  expect(kept()).toBe(false);
  browser(false, true);
  expect(await askToKeep()).toBe(true);
  expect(kept()).toBe(true);
});

it('asks again once there is something to keep, but not for what was promised', async () => {
  const persist = browser(false, false);
  await lookWhetherKept();
  const onSaved = askOnceWhenThereIsSomething();
  onSaved();
  onSaved();
  expect(persist).toHaveBeenCalledOnce();
  const again = browser(true, true);
  await lookWhetherKept();
  askOnceWhenThereIsSomething()();
  expect(again).not.toHaveBeenCalled();
});

it('a browser that can’t be asked has promised nothing', async () => {
  vi.stubGlobal('navigator', {});
  await lookWhetherKept();
  expect(kept()).toBe(false);
  expect(await askToKeep()).toBe(false);
});
