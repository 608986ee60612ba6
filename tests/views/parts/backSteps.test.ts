import { describe, expect, it } from 'vitest';
import { createBackSteps } from '../../../src/views/parts/backSteps.ts';

/** A browser's history as far as it is used: entries, the current one, and Back as a user or a script asks for it. */
function browser(first = '/') {
  const entries: { state: unknown; address: string }[] = [{ state: null, address: first }];
  let at = 0;
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
    back: () => go(-1),
  };
  const addressNow = (): string => entries[at]?.address ?? 'left';
  const followed: string[] = [];
  const steps = createBackSteps(history);
  function go(by: number) {
    at += by;
    if (!steps.moved()) followed.push(addressNow());
  }
  return { steps, followed, addressNow, back: () => go(-1), forward: () => go(1), entries };
}

/** A dialog that is open from the start, and how it is closed by its own button. */
function dialog({ steps }: ReturnType<typeof browser>) {
  const state = { open: true };
  const gone = steps.over(() => {
    state.open = false;
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
  it('K1 closes a dialog and stays, even on the first address of the tab', () => {
    const b = browser('/layout/a');
    const { state } = dialog(b);
    b.back();
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

  it('K2 and K3 after a dialog was closed by its button it leaves the screen at one press', () => {
    const b = browser('/');
    b.steps.write('/layout/a');
    dialog(b).closeByButton();
    const again = dialog(b);
    again.closeByButton();
    expect(b.entries).toHaveLength(3);
    b.back();
    expect(b.addressNow()).toBe('/');
    expect(b.followed).toEqual(['/']);
  });

  it('K2 an address that a dialog leads to is one step from where the dialog was', () => {
    const b = browser('/layout/a');
    const menu = dialog(b);
    b.steps.write('/layout/a/sheets');
    menu.closeByButton();
    b.back();
    expect(b.followed).toEqual(['/layout/a']);
    expect(b.entries.map(({ address }) => address)).toEqual(['/layout/a', '/layout/a/sheets']);
  });

  it('Forward onto an entry of a dialog that is gone shows what is shown', () => {
    const b = browser('/layout/a');
    dialog(b);
    b.back();
    b.forward();
    expect(b.addressNow()).toBe('/layout/a');
    b.steps.write('/');
    expect(b.entries.map(({ address }) => address)).toEqual(['/layout/a', '/']);
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
