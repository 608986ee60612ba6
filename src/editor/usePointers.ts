import {
  type PointerEvent,
  type RefObject,
  useCallback,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
} from 'react';
import { flushSync } from 'react-dom';
import { micName } from '../layout/mics/micName.ts';
import { toKit } from '../rig/deckFrame.ts';
import {
  beginGesture,
  cancelGesture,
  commitGesture,
  type Gesture,
  placeGesture,
  select,
  session,
} from '../session/session.ts';
import { drawnAtOnce } from './canvas/drawNow.ts';
import { grabbed, hitsAt, tapped, touchesAt } from './pick/pick.ts';
import type { Pickable } from './pick/pickables.ts';
import type { Drag, Hold, Place } from './tools/drag.ts';
import { type FingerAct, type FingerEvent, noFingers, turn } from './tools/fingers.ts';
import { type Grab, handleAt } from './tools/grab.ts';
import type { Handle } from './tools/handles.ts';
import { lastPerFrame, screenFrames } from './tools/lastPerFrame.ts';
import type { TapNotes } from './useTapNotes.ts';
import { type KitView, screenToKit } from './view/kitView.ts';
import type { ViewControls } from './view/useView.ts';
import { type ScreenPoint, toDeck } from './view/view.ts';

/** What lies on the plan now, for a finger that comes down. */
export interface Ground {
  readonly kitView: KitView;
  pickables(): readonly Pickable[];
  readonly handles: readonly Handle[];
  readonly controls: ViewControls;
  /** What a drag of something that was met does; undefined where it can't be dragged. */
  dragOf(met: Pickable): ((hold: Hold) => Drag) | undefined;
  /** Is told what a tap can mean, and what took a drag back. */
  readonly notes: Pick<TapNotes, 'met' | 'takenBack'>;
  /** Takes a tap when it is on something that answers by itself; false where it is not. */
  tapFirst(at: ScreenPoint): boolean;
}

/** A drag under way: places of the finger are read in the frames that held when it began. */
interface Dragging {
  readonly drag: Drag;
  readonly kitView: KitView;
  readonly gesture: Gesture | null;
}

/** Px a press may tremble before it is a drag. */
const SLOP = { touch: 9, other: 4 } as const;
/** Px of the screen within which a dragged thing rests on a detent. */
const DETENT = 6;
/** A second tap within so many px of the first asks for the next thing below. */
const SAME_SPOT = 22;
/** Zoom per px of a wheel, and of two fingers on a trackpad, which the browser tells as small turns with Control. */
const WHEEL = 0.0016;
const TRACKPAD = 0.01;
const PX_PER_WHEEL_LINE = 18;

export interface PointerProps {
  onPointerDown(event: PointerEvent): void;
  onPointerMove(event: PointerEvent): void;
  onPointerUp(event: PointerEvent): void;
  onPointerCancel(event: PointerEvent): void;
}

export interface Pointers extends PointerProps {
  /** Takes a drag under way back; true when there was one. */
  takeBack(): boolean;
}

/** Fingers, mouse and wheel on the plan: tap to select, drag to move, pan and pinch the view. */
export function usePointers(element: RefObject<HTMLElement | null>, ground: Ground): Pointers {
  const now = useRef(ground);
  useLayoutEffect(() => {
    now.current = ground;
  }, [ground]);
  const hands = useMemo(() => createHands(() => now.current), []);
  useWheel(element, now);
  // A plan that goes away takes its drag with it: no finger could end it any more.
  useEffect(() => () => void hands.takeBack(), [hands]);
  // A turned tablet lays the page out anew: the finger that stays would put what it drags where nobody pointed.
  useEffect(() => {
    const turned = (): void => {
      if (hands.takeBack()) now.current.notes.takenBack('turned');
    };
    const { orientation } = screen;
    orientation?.addEventListener('change', turned);
    return () => orientation?.removeEventListener('change', turned);
  }, [hands]);
  // Where the drawing stands is looked up when a finger comes down: asking in every move makes the browser lay out the page.
  const corner = useRef<ScreenPoint>({ x: 0, y: 0 });
  const at = useCallback(
    ({ clientX, clientY }: { clientX: number; clientY: number }): ScreenPoint => ({
      x: clientX - corner.current.x,
      y: clientY - corner.current.y,
    }),
    [],
  );
  return useMemo(
    () => ({
      onPointerDown(event) {
        if (event.pointerType === 'mouse' && event.button !== 0) return;
        corner.current = cornerOf(element.current);
        element.current?.setPointerCapture(event.pointerId);
        // A tap does not move the focus on every tablet, and keys go on where the finger was.
        element.current?.focus({ preventScroll: true });
        hands.down(event.pointerId, at(event));
      },
      onPointerMove(event) {
        const slop = event.pointerType === 'touch' ? SLOP.touch : SLOP.other;
        hands.move({ kind: 'move', id: event.pointerId, at: at(event), slop });
      },
      onPointerUp: (event) => hands.end({ kind: 'up', id: event.pointerId }),
      onPointerCancel: (event) => hands.end({ kind: 'lost', id: event.pointerId }),
      takeBack: () => hands.takeBack(),
    }),
    [hands, at, element],
  );
}

/** Where an element's upper left corner stands on the page. */
function cornerOf(element: HTMLElement | null): ScreenPoint {
  const box = element?.getBoundingClientRect();
  return { x: box?.left ?? 0, y: box?.top ?? 0 };
}

/** The state of all fingers, and what they do to the session and the view. */
function createHands(ground: () => Ground) {
  let fingers = noFingers;
  let grab: Grab | undefined;
  let dragging: Dragging | undefined;
  let lastTap: ScreenPoint | undefined;
  const frame = lastPerFrame((to: ScreenPoint): void => {
    if (!dragging) return;
    const { drag, kitView, gesture } = dragging;
    const change = drag.to(placeOf(kitView, to));
    drawnAtOnce(() => flushSync(() => placeGesture(change, frame.again, gesture)));
  }, screenFrames);

  const act = (what: FingerAct): void => {
    const { controls } = ground();
    switch (what.kind) {
      case 'tap':
        lastTap = tapAt(ground(), what.at, lastTap);
        return;
      case 'grab':
        lastTap = undefined;
        dragging = grab && startDrag(ground(), grab, what.at);
        return;
      case 'drag':
        frame.push(what.to);
        return;
      case 'drop':
        frame.flush();
        if (dragging) commitGesture(dragging.gesture);
        dragging = undefined;
        return;
      case 'takeBack':
        frame.drop();
        if (dragging) cancelGesture(dragging.gesture);
        dragging = undefined;
        return;
      case 'pan':
        lastTap = undefined;
        controls.pan(what.by);
        return;
      case 'pinch':
        lastTap = undefined;
        controls.pan(what.by);
        controls.zoom(what.factor, what.about);
    }
  };
  const feed = (event: FingerEvent): void => {
    const turned = turn(fingers, event);
    fingers = turned.fingers;
    for (const what of turned.acts) act(what);
  };
  return {
    down(id: number, at: ScreenPoint): void {
      ground().controls.settle();
      if (fingers.kind === 'none') grab = grabAt(ground(), at);
      const held = fingers.kind === 'dragging';
      feed({ kind: 'down', id, at, grabs: grab !== undefined });
      if (held) ground().notes.takenBack('secondFinger');
    },
    move: feed,
    end: feed,
    takeBack(): boolean {
      const held = fingers.kind === 'dragging';
      feed({ kind: 'escape' });
      return held;
    },
  };
}

const placeOf = ({ view, deck }: KitView, at: ScreenPoint): Place => {
  const onDeck = toDeck(view, at);
  return { deck: onDeck, kit: toKit(deck, onDeck) };
};

/** What a finger there would take hold of: a handle of what is selected, else a thing. */
function grabAt(ground: Ground, at: ScreenPoint): Grab | undefined {
  const { handles, pickables, kitView } = ground;
  const { selection } = session.getState();
  const handle = handleAt(handles, at);
  if (handle && selection) return { selection, start: handle.start };
  const touches = touchesAt(pickables(), screenToKit(kitView, at), kitView.view.scale);
  const canDrag = (met: Pickable): boolean => ground.dragOf(met) !== undefined;
  const hit = grabbed(touches, selection, canDrag);
  const start = hit && ground.dragOf(hit.pickable);
  return start && { selection: hit.pickable.selection, start };
}

function startDrag({ kitView }: Ground, grab: Grab, at: ScreenPoint): Dragging {
  const { scale } = kitView.view;
  const drag = grab.start({
    from: placeOf(kitView, at),
    near: DETENT / scale,
    pxPerMm: scale,
    nameOf: (mic) => micName(mic, session.getState().open?.layout.pieces ?? []),
    ring: () => session.getState().ring,
  });
  if (session.getState().selection !== grab.selection) select(grab.selection);
  return { drag, kitView, gesture: beginGesture(drag.label) };
}

function tapAt(ground: Ground, at: ScreenPoint, last: ScreenPoint | undefined): ScreenPoint {
  const { kitView, pickables } = ground;
  if (ground.tapFirst(at)) return at;
  const hits = hitsAt(pickables(), screenToKit(kitView, at), kitView.view.scale);
  const again = last !== undefined && Math.hypot(at.x - last.x, at.y - last.y) <= SAME_SPOT;
  select(tapped(hits, session.getState().selection, again));
  ground.notes.met(hits.map(({ pickable }) => pickable.selection));
  return at;
}

/** The wheel zooms about the pointer. It is listened to directly, so that the page does not scroll or zoom as well. */
function useWheel(element: RefObject<HTMLElement | null>, now: RefObject<Ground>): void {
  useEffect(() => {
    const target = element.current;
    if (!target) return undefined;
    const turned = (event: WheelEvent): void => {
      event.preventDefault();
      const px = event.deltaMode === 1 ? event.deltaY * PX_PER_WHEEL_LINE : event.deltaY;
      const corner = cornerOf(target);
      const about = { x: event.clientX - corner.x, y: event.clientY - corner.y };
      now.current.controls.zoom(Math.exp(-px * (event.ctrlKey ? TRACKPAD : WHEEL)), about);
    };
    target.addEventListener('wheel', turned, { passive: false });
    return () => target.removeEventListener('wheel', turned);
  }, [element, now]);
}
