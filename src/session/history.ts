import type { Layout } from '../layout/layout.ts';

/** One undoable step: the layout before it, and what the step did, in words for the undo button. */
export interface Step {
  readonly label: string;
  readonly layout: Layout;
}

/** Steps that can be undone (oldest first) and redone (next first). */
export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

export const emptyHistory: History = { past: [], future: [] };

/** Steps kept; structural sharing keeps each one small. */
const MOST_STEPS = 300;

/** The history after a step from `before`. What had been undone is gone. */
export const recorded = (history: History, step: Step): History => ({
  past: [...history.past.slice(1 - MOST_STEPS), step],
  future: [],
});

interface Moved {
  readonly layout: Layout;
  readonly history: History;
}

/** One step back from `now`; undefined when there is none. */
export function undone(history: History, now: Layout): Moved | undefined {
  const step = history.past.at(-1);
  return (
    step && {
      layout: step.layout,
      history: {
        past: history.past.slice(0, -1),
        future: [{ label: step.label, layout: now }, ...history.future],
      },
    }
  );
}

/** One step forward from `now`; undefined when there is none. */
export function redone(history: History, now: Layout): Moved | undefined {
  const [step, ...rest] = history.future;
  return (
    step && {
      layout: step.layout,
      history: { past: [...history.past, { label: step.label, layout: now }], future: rest },
    }
  );
}
