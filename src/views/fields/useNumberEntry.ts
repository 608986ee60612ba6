import { type KeyboardEvent, useRef, useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import {
  beginGesture,
  cancelGesture,
  commitGesture,
  edit,
  type Gesture,
  previewGesture,
  redo,
  undo,
  useSession,
} from '../../session/session.ts';
import { wrapDegrees } from '../../units/angle.ts';
import type { Measure } from './measure.ts';
import { type Limits, readField, roundedWords, stepped } from './reading.ts';
import type { Hold } from './useHold.ts';

export interface NumberEntry {
  /** What the undo button says: `Snare height`. */
  readonly step: string;
  readonly value: number;
  readonly measure: Measure;
  readonly limits: Limits;
  /** A direction goes round: 355 and 10 more is 5. */
  readonly round?: boolean;
  readonly apply: (layout: Layout, value: number) => Layout;
}

const keySteps: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

/** Selects the whole number once the new one is shown, so that what is typed next replaces it. */
const selectSoon = (input: HTMLInputElement): number =>
  requestAnimationFrame(() => {
    if (document.activeElement === input) input.select();
  });

/** A field in which nothing is being typed has no undo of its own: the keys undo and redo the layout's last step. */
function undoByKey(event: KeyboardEvent<HTMLInputElement>): boolean {
  if (event.ctrlKey === event.metaKey || event.altKey) return false;
  const key = event.key.toLowerCase();
  if (key === 'z' && !event.shiftKey) undo();
  else if (key === 'z' || key === 'y') redo();
  else return false;
  return true;
}

/** What was said of what was typed, beside which value: why it was refused, or how it was rounded. */
interface Said {
  readonly problem: string;
  readonly rounded: string;
  readonly beside: number;
}

/** What a number field does: typing with its own message, steps by key, and steps by holding a button as one undoable step. */
export function useNumberEntry({
  step,
  value: stored,
  measure,
  limits,
  round,
  apply,
}: NumberEntry) {
  const unit = useSession((state) => state.open?.layout.units ?? 'mm');
  const value = round ? wrapDegrees(stored) : stored;
  const shown = measure.show(value, unit);
  const [draft, setDraft] = useState<string | null>(null);
  const [said, setSaid] = useState<Said | null>(null);
  // A value that changed by other means ends the old message.
  if (said !== null && said.beside !== stored) setSaid(null);
  const held = useRef(value);
  const gesture = useRef<Gesture | null>(null);

  const set = (to: number) => edit(step, (layout) => apply(layout, to));
  const after = (from: number, steps: number): number => {
    const change = steps * measure.step(unit);
    return round ? wrapDegrees(from + change) : stepped(from, change, limits);
  };

  const take = () => {
    setDraft(null);
    setSaid(null);
    if (draft === null || draft === shown) return;
    const reading = readField(draft, measure, limits, unit);
    if (reading.ok) {
      set(reading.value);
      setSaid({ problem: '', rounded: roundedWords(reading), beside: reading.value });
    } else {
      setSaid({ problem: `${reading.message} Kept ${shown}.`, rounded: '', beside: stored });
    }
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      take();
      selectSoon(event.currentTarget);
    }
    if (event.key === 'Escape') setDraft(null);
    if (draft !== null) return;
    const steps = keySteps[event.key];
    if (steps !== undefined) set(after(value, steps));
    else if (!undoByKey(event)) return;
    event.preventDefault();
    selectSoon(event.currentTarget);
  };
  const holding = (sign: 1 | -1): Hold => ({
    start: () => {
      held.current = value;
      gesture.current = beginGesture(step);
    },
    step: (count) => {
      const to = after(held.current, sign * count);
      previewGesture((layout) => apply(layout, to), gesture.current);
    },
    end: () => commitGesture(gesture.current),
    cancel: () => cancelGesture(gesture.current),
  });
  const { problem, rounded } = said ?? { problem: '', rounded: '' };
  return { unit, shown, draft, problem, rounded, setDraft, take, onKeyDown, holding };
}
