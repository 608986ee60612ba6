import type { ScreenPoint } from '../view/view.ts';

/**
 * What fingers (or a mouse) on the plan mean: a state machine that knows nothing of what lies under them.
 *
 * T1. A press that moves less than the slop is a tap.
 * T2. A press on something that can be dragged, once it moves beyond the slop, is a drag; elsewhere it pans.
 * T3. A second finger ends whatever one finger did (a drag is taken back) and starts a pinch.
 * T4. After a pinch, or after a drag was taken back, nothing starts until every finger is lifted.
 */
export type Fingers =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'pressed';
      readonly id: number;
      readonly from: ScreenPoint;
      readonly grabs: boolean;
    }
  | { readonly kind: 'dragging'; readonly id: number }
  | { readonly kind: 'panning'; readonly id: number; readonly at: ScreenPoint }
  | { readonly kind: 'pinching'; readonly first: Finger; readonly second: Finger }
  | { readonly kind: 'spent'; readonly down: readonly number[] };

interface Finger {
  readonly id: number;
  readonly at: ScreenPoint;
}

export type FingerEvent =
  | {
      readonly kind: 'down';
      readonly id: number;
      readonly at: ScreenPoint;
      /** Whether something that can be dragged lies there. */
      readonly grabs: boolean;
    }
  | { readonly kind: 'move'; readonly id: number; readonly at: ScreenPoint; readonly slop: number }
  | { readonly kind: 'up'; readonly id: number }
  /** The browser took the finger away. */
  | { readonly kind: 'lost'; readonly id: number }
  /** The Escape key. */
  | { readonly kind: 'escape' };

export type FingerAct =
  | { readonly kind: 'tap'; readonly at: ScreenPoint }
  | { readonly kind: 'grab'; readonly at: ScreenPoint }
  | { readonly kind: 'drag'; readonly to: ScreenPoint }
  | { readonly kind: 'drop' }
  | { readonly kind: 'takeBack' }
  | { readonly kind: 'pan'; readonly by: ScreenPoint }
  | {
      readonly kind: 'pinch';
      readonly factor: number;
      readonly about: ScreenPoint;
      readonly by: ScreenPoint;
    };

export interface Turned {
  readonly fingers: Fingers;
  readonly acts: readonly FingerAct[];
}

export const noFingers: Fingers = { kind: 'none' };
const stay = (fingers: Fingers): Turned => ({ fingers, acts: [] });

/** The next state and what it asks for. */
export function turn(fingers: Fingers, event: FingerEvent): Turned {
  switch (event.kind) {
    case 'down':
      return pressed(fingers, event);
    case 'move':
      return moved(fingers, event);
    case 'up':
      return lifted(fingers, event.id);
    case 'lost':
      return lost(fingers, event.id);
    case 'escape':
      return fingers.kind === 'dragging'
        ? { fingers: { kind: 'spent', down: [fingers.id] }, acts: [{ kind: 'takeBack' }] }
        : stay(fingers);
  }
}

function pressed(fingers: Fingers, event: FingerEvent & { kind: 'down' }): Turned {
  const { id, at, grabs } = event;
  switch (fingers.kind) {
    case 'none':
      return stay({ kind: 'pressed', id, from: at, grabs });
    case 'pressed':
      return stay(pinch({ id: fingers.id, at: fingers.from }, { id, at }));
    case 'panning':
      return stay(pinch({ id: fingers.id, at: fingers.at }, { id, at }));
    case 'dragging':
      return { fingers: { kind: 'spent', down: [fingers.id, id] }, acts: [{ kind: 'takeBack' }] };
    case 'pinching':
      return stay({ kind: 'spent', down: [fingers.first.id, fingers.second.id, id] });
    case 'spent':
      return stay({ kind: 'spent', down: [...fingers.down, id] });
  }
}

const pinch = (first: Finger, second: Finger): Fingers => ({ kind: 'pinching', first, second });

function moved(fingers: Fingers, event: FingerEvent & { kind: 'move' }): Turned {
  const { id, at } = event;
  if (fingers.kind === 'pinching') return pinched(fingers, id, at);
  if (fingers.kind === 'none' || fingers.kind === 'spent' || fingers.id !== id) {
    return stay(fingers);
  }
  switch (fingers.kind) {
    case 'pressed':
      if (Math.hypot(at.x - fingers.from.x, at.y - fingers.from.y) < event.slop) {
        return stay(fingers);
      }
      return fingers.grabs
        ? {
            fingers: { kind: 'dragging', id },
            acts: [
              { kind: 'grab', at: fingers.from },
              { kind: 'drag', to: at },
            ],
          }
        : { fingers: { kind: 'panning', id, at }, acts: [panBetween(fingers.from, at)] };
    case 'dragging':
      return { fingers, acts: [{ kind: 'drag', to: at }] };
    case 'panning':
      return { fingers: { kind: 'panning', id, at }, acts: [panBetween(fingers.at, at)] };
  }
}

const panBetween = (from: ScreenPoint, to: ScreenPoint): FingerAct => ({
  kind: 'pan',
  by: { x: to.x - from.x, y: to.y - from.y },
});

function pinched(fingers: Fingers & { kind: 'pinching' }, id: number, at: ScreenPoint): Turned {
  const { first, second } = fingers;
  if (id !== first.id && id !== second.id) return stay(fingers);
  const next = id === first.id ? { first: { id, at }, second } : { first, second: { id, at } };
  const before = between(first, second);
  const after = between(next.first, next.second);
  return {
    fingers: { kind: 'pinching', ...next },
    acts: [
      {
        kind: 'pinch',
        factor: after.spread / before.spread,
        about: after.middle,
        by: { x: after.middle.x - before.middle.x, y: after.middle.y - before.middle.y },
      },
    ],
  };
}

/** Fingers are never nearer than this: two that touch do not zoom without bound. */
const LEAST_SPREAD = 20;

function between(first: Finger, second: Finger): { spread: number; middle: ScreenPoint } {
  return {
    spread: Math.max(LEAST_SPREAD, Math.hypot(second.at.x - first.at.x, second.at.y - first.at.y)),
    middle: { x: (first.at.x + second.at.x) / 2, y: (first.at.y + second.at.y) / 2 },
  };
}

function lifted(fingers: Fingers, id: number): Turned {
  switch (fingers.kind) {
    case 'pressed':
      return fingers.id === id
        ? { fingers: noFingers, acts: [{ kind: 'tap', at: fingers.from }] }
        : stay(fingers);
    case 'dragging':
      return fingers.id === id ? { fingers: noFingers, acts: [{ kind: 'drop' }] } : stay(fingers);
    default:
      return stay(without(fingers, id));
  }
}

function lost(fingers: Fingers, id: number): Turned {
  if (fingers.kind === 'dragging' && fingers.id === id) {
    return { fingers: noFingers, acts: [{ kind: 'takeBack' }] };
  }
  return fingers.kind === 'pressed' && fingers.id === id
    ? stay(noFingers)
    : stay(without(fingers, id));
}

/** What is left when a finger that was neither pressing nor dragging is lifted. */
function without(fingers: Fingers, id: number): Fingers {
  switch (fingers.kind) {
    case 'panning':
      return fingers.id === id ? noFingers : fingers;
    case 'pinching':
      if (id !== fingers.first.id && id !== fingers.second.id) return fingers;
      return {
        kind: 'spent',
        down: [id === fingers.first.id ? fingers.second.id : fingers.first.id],
      };
    case 'spent': {
      const down = fingers.down.filter((other) => other !== id);
      return down.length === 0 ? noFingers : { kind: 'spent', down };
    }
    default:
      return fingers;
  }
}
