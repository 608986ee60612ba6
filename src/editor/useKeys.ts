import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef } from 'react';
import type { Layout } from '../layout/layout.ts';
import type { Selection } from '../session/selection.ts';
import {
  beginGesture,
  commitGesture,
  edit,
  type Gesture,
  previewGesture,
  select,
  session,
} from '../session/session.ts';
import { heldFor, type KeyChange, keyEdit } from './tools/keyEdit.ts';
import { type ChangeCommand, commandOf, type KeyCommand } from './tools/keys.ts';
import { neighbour } from './tools/things.ts';
import type { ViewControls } from './view/useView.ts';
import { keyLabel } from './words.ts';

export interface KeyProps {
  onKeyDown(event: KeyboardEvent): void;
  onKeyUp(): void;
  onFocus(): void;
  onBlur(): void;
}

interface Keyboard {
  readonly controls: ViewControls;
  /** What a key that moves something means in this drawing's frames. */
  readonly framed: (command: ChangeCommand) => KeyChange;
  /** Takes a drag under way back; true when there was one. */
  readonly takeBack: () => boolean;
}

/** The key that is held down, for how many steps, and whether Escape let go of the plan itself. */
interface Held {
  key: string | null;
  times: number;
  letGo: boolean;
  /** What the key began; null where it changes nothing of the layout. */
  gesture: Gesture | null;
}

/**
 * Keys on the plan. A key that is held down is one step for undo. Escape with nothing selected lets go of the plan: the next Tab
 * leaves it, so that nobody has to walk through every thing to get past it.
 */
export function useKeys(keyboard: Keyboard): KeyProps {
  const now = useRef(keyboard);
  useEffect(() => {
    now.current = keyboard;
  }, [keyboard]);
  const held = useRef<Held>({ key: null, times: 0, letGo: false, gesture: null });
  const release = useCallback(() => {
    commitGesture(held.current.gesture);
    held.current.key = null;
    held.current.gesture = null;
  }, []);
  // A plan that goes away hears no key come up.
  useEffect(() => release, [release]);
  const press = useCallback(
    (event: KeyboardEvent) => {
      const { key, shiftKey: shift, altKey: alt } = event;
      const command = commandOf({ key, shift, alt, control: event.ctrlKey || event.metaKey });
      if (!command) return;
      if (event.repeat && held.current.key === key) held.current.times += 1;
      else {
        release();
        held.current.times = 1;
      }
      if (!obey(command, now.current, held.current)) return;
      event.preventDefault();
      held.current.key = key;
    },
    [release],
  );
  const enter = useCallback(() => {
    held.current.letGo = false;
  }, []);
  return useMemo(
    () => ({ onKeyDown: press, onKeyUp: release, onFocus: enter, onBlur: release }),
    [press, release, enter],
  );
}

/** Does what a key asks; false when the key is left to the browser. */
function obey(command: KeyCommand, keyboard: Keyboard, held: Held): boolean {
  const { open, selection } = session.getState();
  if (!open) return false;
  const { controls, framed } = keyboard;
  switch (command.kind) {
    case 'cycle':
      return !held.letGo && cycle(open.layout, selection, command.by);
    case 'clear':
      held.letGo = selection === null;
      if (!keyboard.takeBack()) select(null);
      return true;
    case 'zoom':
      controls.zoomStep(command.factor);
      return true;
    case 'fit':
      controls.fit();
      return true;
    case 'remove':
      if (!selection) return false;
      edit(keyLabel(open.layout, selection, 'remove'), (layout) =>
        keyEdit(layout, selection, { kind: 'remove' }),
      );
      select(null);
      return true;
    default:
      if (!selection) return false;
      change(open.layout, selection, framed(command), held);
      return true;
  }
}

/** Past the last thing the Tab key leaves the plan, as it leaves any other control. */
function cycle(layout: Layout, selection: Selection | null, by: 1 | -1): boolean {
  const next = neighbour(layout, selection, by);
  select(next);
  return next !== null;
}

function change(layout: Layout, selection: Selection, asked: KeyChange, held: Held): void {
  if (held.times === 1) held.gesture = beginGesture(keyLabel(layout, selection, asked.kind));
  const whole = heldFor(asked, held.times);
  previewGesture((before) => keyEdit(before, selection, whole), held.gesture);
}
