import { type PointerEvent, useRef, useState } from 'react';

/** A row on its way to another place. */
interface Drag {
  readonly id: string;
  readonly to: number;
}

interface Reorder {
  /** Where the dragged row would go; null while none is dragged. */
  readonly drag: Drag | null;
  readonly list: React.RefObject<HTMLOListElement | null>;
  /** What the handle of a row needs. */
  handle(id: string): {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(): void;
    onPointerCancel(): void;
  };
}

/** Drags rows of a list by a handle; `onMove` is told once, when the row is let go. */
export function useReorder(onMove: (id: string, to: number) => void): Reorder {
  const list = useRef<HTMLOListElement>(null);
  const [drag, setDrag] = useState<Drag | null>(null);
  const placeAt = (y: number): number => {
    const rows = [...(list.current?.children ?? [])];
    const place = rows.findIndex((row) => y < row.getBoundingClientRect().bottom);
    return place < 0 ? rows.length - 1 : place;
  };
  return {
    drag,
    list,
    handle: (id) => ({
      onPointerDown: (event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        setDrag({ id, to: placeAt(event.clientY) });
      },
      onPointerMove: (event) => {
        if (drag) setDrag({ id, to: placeAt(event.clientY) });
      },
      onPointerUp: () => {
        if (drag) onMove(id, drag.to);
        setDrag(null);
      },
      onPointerCancel: () => setDrag(null),
    }),
  };
}
