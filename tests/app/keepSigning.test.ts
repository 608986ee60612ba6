import { afterEach, beforeEach, expect, test } from 'vitest';
import { keepSigning } from '../../src/app/keepSigning.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { moveMic, renameMic } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { initialState, openLayout, session } from '../../src/session/session.ts';
import { beginSigning, goTo, say, signing, startAgain } from '../../src/session/signing.ts';
import { box } from './box.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;
const [first = '', second = ''] = kit.mics
  .filter(({ mount }) => mount.kind === 'stand')
  .map(({ id }) => id);
const none = signing.getInitialState();

beforeEach(() => {
  openLayout(null);
  signing.setState(none);
});
afterEach(() => session.setState(initialState));

const KEY = 'strokespace.signing';
const storage = box();
keepSigning(() => storage);

/** What is kept of an asking that has come to its second mic. */
function begun(): string {
  openLayout(kit);
  beginSigning('kit', [first, second]);
  say({ about: 'mic', mic: first }, { answer: 'move', note: 'Lower', wish: { x: 1, y: 2 } });
  goTo({ at: 'mic', index: 1 });
  return storage.getItem(KEY) ?? '';
}

/** A new start with what was kept, and the layout opened. */
function startedAgain(kept: string, layout: Layout) {
  openLayout(null);
  signing.setState(none);
  storage.setItem(KEY, kept);
  openLayout(layout);
  return signing.getState();
}

test('an asking goes on after a new start where it was', () => {
  const kept = begun();
  const asking = signing.getState();
  expect(startedAgain(kept, kit)).toEqual(asking);
  expect(asking.step).toEqual({ at: 'mic', index: 1 });
});

test('a new name of a mic does no harm, a mic that moved begins anew', () => {
  const kept = begun();
  expect(startedAgain(kept, renameMic(kit, first, 'Left')).layout).toBe('kit');
  const moved = moveMic(kit, first, { x: 30, y: 0 });
  expect(startedAgain(kept, moved)).toEqual(none);
});

test('another layout, a text that is no asking, and one that is over bring nothing back', () => {
  const kept = begun();
  expect(startedAgain(kept, { ...kit, id: 'other' })).toEqual(none);
  for (const text of ['', 'null', '{', '{"layout":"kit"}', kept.replace('"move"', '"maybe"')]) {
    expect(startedAgain(text, kit), text).toEqual(none);
  }
  begun();
  startAgain(null, []);
  expect(storage.getItem(KEY)).toBeNull();
});
