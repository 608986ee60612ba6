import type { Drawing } from '../drawing/drawing.ts';
import type { Mark, Point } from '../mark.ts';

/** A room on the paper: x and y of its upper left corner, mm, y down. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A drawing's way onto the paper. */
export interface OnPaper {
  readonly scale: number;
  point(p: Point): Point;
  marks(marks: readonly Mark[]): readonly Mark[];
}

/** Puts a drawing into the middle of a room at a scale. Lengths are divided by the scale and nothing else; y is turned down. */
export function layOut(drawing: Drawing, room: Room, scale: number): OnPaper {
  const centre = {
    x: (drawing.low.x + drawing.high.x) / 2,
    y: (drawing.low.y + drawing.high.y) / 2,
  };
  const middle = { x: room.x + room.width / 2, y: room.y + room.height / 2 };
  const point = ({ x, y }: Point): Point => ({
    x: middle.x + (x - centre.x) / scale,
    y: middle.y - (y - centre.y) / scale,
  });
  const laid = (mark: Mark): Mark => {
    switch (mark.kind) {
      case 'line':
        return { ...mark, points: mark.points.map(point) };
      case 'circle':
        return { ...mark, centre: point(mark.centre), radius: mark.radius / scale };
      case 'text':
        return { ...mark, at: point(mark.at) };
    }
  };
  return { scale, point, marks: (marks) => marks.map(laid) };
}
