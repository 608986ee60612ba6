import { afterEach, expect, test } from 'vitest';
import { keepSelection } from '../../src/app/keepSelection.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Selection } from '../../src/session/selection.ts';
import { initialState, openLayout, select, session } from '../../src/session/session.ts';
import { box } from './box.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;
const mic: Selection = { kind: 'mic', id: kit.mics[0]?.id ?? '' };
const KEY = 'strokespace.selection';

afterEach(() => session.setState(initialState, true));

/** What is selected after a new start with what was kept, once the layout is opened. */
async function startedWith(kept: string | null, layout: Layout): Promise<Selection | null> {
  session.setState(initialState, true);
  const storage = box();
  if (kept !== null) storage.setItem(KEY, kept);
  keepSelection(() => storage);
  openLayout(layout);
  await Promise.resolve();
  return session.getState().selection;
}

/** What is kept once this was selected. */
function keptOf(selection: Selection | null): string | null {
  const storage = box();
  keepSelection(() => storage);
  openLayout(kit);
  select({ kind: 'deck' });
  select(selection);
  return storage.getItem(KEY);
}

test('what was selected is selected again after a new start', async () => {
  for (const selection of [mic, { kind: 'box' } as const]) {
    expect(await startedWith(keptOf(selection), kit)).toEqual(selection);
  }
});

test('it is gone with the thing, with another layout, and once it was let go of', async () => {
  const kept = keptOf(mic);
  expect(await startedWith(kept, { ...kit, mics: kit.mics.slice(1) })).toBeNull();
  expect(await startedWith(kept, { ...kit, id: 'other' })).toBeNull();
  expect(keptOf(null)).toBeNull();
  for (const text of ['', '{', '{"layout":"kit"}', '{"layout":"kit","selection":{"kind":"x"}}']) {
    expect(await startedWith(text, kit), text).toBeNull();
  }
});

test('a layout that was closed opens with nothing selected', async () => {
  const kept = keptOf(mic);
  expect(await startedWith(kept, kit)).toEqual(mic);
  openLayout(null);
  openLayout(kit);
  await Promise.resolve();
  expect(session.getState().selection).toBeNull();
});

test('without storage nothing breaks', async () => {
  session.setState(initialState, true);
  keepSelection(() => {
    throw new Error('refused');
  });
  openLayout(kit);
  select(mic);
  await Promise.resolve();
  expect(session.getState().selection).toEqual(mic);
});
