import { type PointerEvent, useEffect, useRef, useState } from 'react';

/** A row on its way to another place. */
interface Drag {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** On which side of a row the dragged one would come to lie. */
export type DropSide = 'above' | 'below';

interface Reorder {
  /** Where the dragged row would go, told at the row of that place; null for all others and while none is dragged. */
  dropAt(place: number): DropSide | null;
  readonly list: React.RefObject<HTMLOListElement | null>;
  /** What the handle of a row needs. */
  handle(id: string): {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(): void;
    onPointerCancel(): void;
  };
}

/** How near to the edge of what scrolls a finger lets it scroll, and how far in a frame, px. */
const EDGE = 56;
const SCROLL = 7;

/** Drags rows of a list by a handle; `onMove` is told once, when the row is let go. Near the list's edges it scrolls on. */
export function useReorder(onMove: (id: string, to: number) => void): Reorder {
  const list = useRef<HTMLOListElement>(null);
  const [drag, setDrag] = useState<Drag | null>(null);
  const finger = useRef(0);
  const isDragged = drag !== null;
  useEffect(() => {
    if (!isDragged) return undefined;
    let ticket = 0;
    const scroll = () => {
      if (scrolled(list.current, finger.current)) setDrag((now) => at(now, list, finger.current));
      ticket = requestAnimationFrame(scroll);
    };
    ticket = requestAnimationFrame(scroll);
    return () => cancelAnimationFrame(ticket);
  }, [isDragged]);
  return {
    dropAt: (place) =>
      drag?.to !== place || drag.from === place ? null : drag.from < place ? 'below' : 'above',
    list,
    handle: (id) => ({
      onPointerDown: (event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        finger.current = event.clientY;
        const from = placeAt(list.current, event.clientY);
        setDrag({ id, from, to: from });
      },
      onPointerMove: (event) => {
        finger.current = event.clientY;
        setDrag((now) => at(now, list, event.clientY));
      },
      onPointerUp: () => {
        if (drag) onMove(drag.id, drag.to);
        setDrag(null);
      },
      onPointerCancel: () => setDrag(null),
    }),
  };
}

const at = (drag: Drag | null, list: Reorder['list'], y: number): Drag | null =>
  drag && { ...drag, to: placeAt(list.current, y) };

function placeAt(list: HTMLElement | null, y: number): number {
  const rows = [...(list?.children ?? [])];
  const place = rows.findIndex((row) => y < row.getBoundingClientRect().bottom);
  return place < 0 ? rows.length - 1 : place;
}

/** Whether the panel scrolled because the finger is near its upper or lower edge. */
function scrolled(list: HTMLElement | null, y: number): boolean {
  const view = list?.closest('.panel-view');
  if (!view) return false;
  const { top, bottom } = view.getBoundingClientRect();
  const before = view.scrollTop;
  if (y < top + EDGE) view.scrollTop -= SCROLL;
  else if (y > bottom - EDGE) view.scrollTop += SCROLL;
  return view.scrollTop !== before;
}
