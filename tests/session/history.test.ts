import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { renameLayout } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { emptyHistory, type History, recorded, redone, undone } from '../../src/session/history.ts';

const start = (): Layout => {
  const kit = STARTING_KITS[0];
  if (!kit) throw new Error('expected a starting kit');
  return kit.make('kit');
};
const named = (names: readonly string[]): { now: Layout; history: History } => {
  let now = start();
  let history = emptyHistory;
  for (const name of names) {
    history = recorded(history, { label: name, layout: now });
    now = renameLayout(now, name);
  }
  return { now, history };
};
const names = fc.array(fc.string({ minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 12 });

describe('history', () => {
  test('undoing every step gives back the start; redoing them gives back the end', () => {
    fc.assert(
      fc.property(names, (steps) => {
        let { now, history } = named(steps);
        const end = now;
        for (let moved = undone(history, now); moved; moved = undone(history, now)) {
          ({ layout: now, history } = moved);
        }
        expect(now).toEqual(start());
        for (let moved = redone(history, now); moved; moved = redone(history, now)) {
          ({ layout: now, history } = moved);
        }
        expect(now).toBe(end);
      }),
    );
  });

  test('a new step forgets what had been undone', () => {
    const { now, history } = named(['a', 'b']);
    const back = undone(history, now);
    if (!back) throw new Error('expected a step to undo');
    const again = recorded(back.history, { label: 'c', layout: back.layout });
    expect(redone(again, now)).toBeUndefined();
  });

  test('keeps the last 300 steps', () => {
    const { history } = named(Array.from({ length: 320 }, (_, i) => `n${i}`));
    expect(history.past).toHaveLength(300);
    expect(history.past.at(-1)?.label).toBe('n319');
  });
});
