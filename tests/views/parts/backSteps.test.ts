import { describe, expect, it } from 'vitest';
import { createBackSteps } from '../../../src/views/parts/backSteps.ts';

/**
 * A browser's history as far as it is used: entries, the current one, and Back as a user or a script asks for it. What a script asks for
 * comes when the browser gets to it (`turn`); a user sees nothing earlier.
 */
function browser(first = '/', state: unknown = null) {
  const entries: { state: unknown; address: string }[] = [{ state, address: first }];
  let at = 0;
  let asked = 0;
  const history = {
    get state() {
      return entries[at]?.state ?? null;
    },
    pushState(state: unknown, _: string, address?: string) {
      entries.splice(at + 1, entries.length, { state, address: address ?? addressNow() });
      at += 1;
    },
    replaceState(state: unknown, _: string, address?: string) {
      entries[at] = { state, address: address ?? addressNow() };
    },
    back: () => {
      asked += 1;
    },
  };
  const addressNow = (): string => entries[at]?.address ?? 'left';
  const followed: string[] = [];
  const steps = createBackSteps(history);
  function go(by: number) {
    at += by;
    if (!steps.moved()) followed.push(addressNow());
  }
  async function turn() {
    await Promise.resolve();
    for (; asked > 0; asked -= 1) go(-1);
  }
  return {
    ...{ steps, followed, addressNow, entries, turn },
    back: () => go(-1),
    jump: (by: number) => go(by),
    forward: () => go(1),
    isAsked: () => asked > 0,
  };
}

/** A dialog that is open from the start, and how it is closed by its own button. */
function dialog({ steps }: ReturnType<typeof browser>) {
  const state = { open: true };
  const gone = steps.over(() => {
    state.open = false;
    gone();
  });
  return {
    state,
    closeByButton() {
      state.open = false;
      gone();
    },
  };
}

describe('Back', () => {
  it('K1 closes a dialog and stays, even on the first address of the tab', async () => {
    const b = browser('/layout/a');
    const { state } = dialog(b);
    b.back();
    await b.turn();
    expect(state.open).toBe(false);
    expect(b.addressNow()).toBe('/layout/a');
    expect(b.followed).toEqual([]);
  });

  it('K1 closes the topmost of two, one a press', () => {
    const b = browser();
    const under = dialog(b);
    const over = dialog(b);
    b.back();
    expect([under.state.open, over.state.open]).toEqual([true, false]);
    b.back();
    expect(under.state.open).toBe(false);
    expect(b.addressNow()).toBe('/');
    expect(b.followed).toEqual([]);
  });

  it('K2 after dialogs were closed by their buttons it is one step of the browser, and two are two', async () => {
    const b = browser('/');
    b.steps.write('/layout/a');
    b.steps.write('/layout/a/history');
    for (let i = 0; i < 3; i += 1) {
      dialog(b).closeByButton();
      await b.turn();
    }
    b.back();
    expect(b.followed).toEqual(['/layout/a']);
    const again = browser('/');
    again.steps.write('/layout/a');
    again.steps.write('/layout/a/history');
    dialog(again).closeByButton();
    await again.turn();
    // As from the list that a long press on Back opens.
    again.jump(-2);
    expect(again.followed).toEqual(['/']);
    expect(again.isAsked()).toBe(false);
  });

  it('K2 of two dialogs the lower one keeps the entry when the upper one is closed by its button', async () => {
    const b = browser('/layout/a');
    const under = dialog(b);
    dialog(b).closeByButton();
    await b.turn();
    expect(b.entries).toHaveLength(2);
    b.back();
    expect(under.state.open).toBe(false);
    expect(b.addressNow()).toBe('/layout/a');
  });

  it('K2 an address that a dialog leads to is one step from where the dialog was', async () => {
    const b = browser('/layout/a');
    const menu = dialog(b);
    b.steps.write('/layout/a/sheets');
    menu.closeByButton();
    await b.turn();
    b.back();
    expect(b.followed).toEqual(['/layout/a']);
    expect(b.entries.map(({ address }) => address)).toEqual(['/layout/a', '/layout/a/sheets']);
  });

  it('K2 a dialog that another one leads to in the same breath takes its entry over', async () => {
    const b = browser('/layout/a');
    const first = dialog(b);
    first.closeByButton();
    const second = dialog(b);
    await b.turn();
    expect(b.entries).toHaveLength(2);
    b.back();
    expect(second.state.open).toBe(false);
    expect(b.followed).toEqual([]);
  });

  it('K3 a dialog that opens while the entry of the last one is being left has one of its own', async () => {
    const b = browser('/layout/a');
    dialog(b).closeByButton();
    await Promise.resolve();
    expect(b.isAsked()).toBe(true);
    const next = dialog(b);
    await b.turn();
    b.back();
    expect(next.state.open).toBe(false);
    expect(b.addressNow()).toBe('/layout/a');
    expect(b.followed).toEqual([]);
  });

  it('K3 an address that comes while an entry is being left can be written when that is done', async () => {
    const b = browser('/layout/a');
    dialog(b).closeByButton();
    await Promise.resolve();
    b.steps.write('/');
    await b.turn();
    expect(b.addressNow()).toBe('/layout/a');
    b.steps.write('/');
    expect(b.entries.map(({ address }) => address)).toEqual(['/layout/a', '/']);
  });

  it('Forward onto an entry of a dialog that is gone shows what is shown', async () => {
    const b = browser('/layout/a');
    dialog(b);
    b.back();
    b.forward();
    await b.turn();
    expect(b.addressNow()).toBe('/layout/a');
    expect(b.followed).toEqual([]);
    b.steps.write('/');
    expect(b.entries.map(({ address }) => address)).toEqual(['/layout/a', '/']);
  });

  it('after a reload with a dialog open there is none, and its entry is one of the screen', () => {
    const b = browser('/layout/a', { over: true });
    b.steps.write('/');
    b.back();
    expect(b.followed).toEqual(['/layout/a']);
  });

  it('follows every step between addresses while nothing lies over them', () => {
    const b = browser('/');
    b.steps.write('/layout/a');
    b.steps.write('/layout/a/history');
    b.back();
    b.back();
    b.forward();
    expect(b.followed).toEqual(['/layout/a', '/', '/layout/a']);
  });
});
