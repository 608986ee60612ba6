import type { Mm } from '../../units/quantity.ts';
import { line, type Mark, type Point } from '../mark.ts';
import type { Room } from './layOut.ts';
import { ASCENT, DESCENT, textWidth } from './lettering.ts';

/** A label that wants a place on the paper, mm. */
export interface PaperLabel {
  readonly at: Point;
  /** The fullest first: a shorter one is taken where the fuller finds no room. */
  readonly forms: readonly string[];
}

/** The least letters of labels, mm: 6.8 points. */
export const LABEL_SIZE = 2.4;
/** Letters of labels that are read at arm's length, mm, the largest first: 8.5 points and less. */
const LARGER = [3, 2.8, 2.6] as const;
/** Free paper between labels. */
const GAP = 0.35;
/** How far from what it names a label may stand: beside it, or at the end of a line. */
const AWAY = [1.4, 3, 5, 7.5, 10, 13, 17, 22, 28, 36, 46, 58] as const;
/** Directions that are tried at each distance. */
const DIRECTIONS = 24;
/** From here on a line leads to the label. */
const LED_FROM = 2;
/** What it costs, in mm of distance, to hide a square mm that is drawn on, and to take a shorter form. */
const HIDDEN = 1;
const SHORTER = [0, 4, 16] as const;

interface Surroundings {
  readonly taken?: readonly Room[];
  readonly drawn?: readonly Point[];
  readonly size?: Mm;
}

/** {@link placePaperLabels}, larger. N4 The letters are the largest in which no more labels are left out than in the least. */
export function placeLargeLabels(
  labels: readonly PaperLabel[],
  room: Room,
  around: Omit<Surroundings, 'size'>,
): readonly Mark[] {
  const told = (marks: readonly Mark[]): number =>
    marks.filter(({ kind }) => kind === 'text').length;
  const inSize = (size: Mm) => placePaperLabels(labels, room, { ...around, size });
  let least: readonly Mark[] | undefined;
  for (const size of LARGER) {
    const marks = inSize(size);
    if (told(marks) === labels.length) return marks;
    least ??= inSize(LABEL_SIZE);
    if (told(marks) >= told(least)) return marks;
  }
  return least ?? [];
}

/**
 * Finds places for labels on paper.
 *
 * N1 No label lies over another, over a line that leads to another, or outside the room; no two leading lines cross.
 * N2 Among the places that are free the cheapest is taken: near, hiding little of the drawing, and in full. `drawn` are points of the
 *    drawing, close to each other.
 * N3 A label that finds no place even in its shortest form may lie over leading lines, and its own may pass under labels; one that
 *    finds none even then is left out, and the table beside the drawing has it.
 */
export function placePaperLabels(
  labels: readonly PaperLabel[],
  room: Room,
  { taken = [], drawn = [], size = LABEL_SIZE }: Surroundings = {},
): readonly Mark[] {
  const boxes: Room[] = [...taken];
  const leads: (readonly [Point, Point])[] = [];
  const marks: Mark[] = [];
  const hides = hiddenIn(drawn);
  // Those in the thick of it choose first.
  const crowded = labels.toSorted((a, b) => neighbours(b, labels) - neighbours(a, labels));
  for (const label of crowded) {
    const found =
      freePlace(label, { room, boxes, leads, size, isStrict: true }, hides) ??
      freePlace(label, { room, boxes, leads: [], size, isStrict: false }, hides);
    if (!found) continue;
    boxes.push(found.box);
    if (found.away >= LED_FROM) leads.push([label.at, found.foot]);
    marks.push(...labelMarks(found, size));
  }
  return [...leads.map(leadMark), ...marks];
}

interface Ground {
  readonly room: Room;
  readonly boxes: readonly Room[];
  readonly leads: readonly (readonly [Point, Point])[];
  /** Of the letters. */
  readonly size: Mm;
  /** Whether a line may lead neither under another label nor across another line. */
  readonly isStrict: boolean;
}

interface Found {
  readonly text: string;
  readonly box: Room;
  readonly away: number;
  /** Where a line from what is named meets the label. */
  readonly foot: Point;
}

function freePlace(
  { at, forms }: PaperLabel,
  ground: Ground,
  hides: (box: Room) => number,
): Found | undefined {
  let best: { readonly found: Found; readonly cost: number } | undefined;
  const height = (ASCENT + DESCENT) * ground.size;
  for (const [shorter, text] of forms.entries()) {
    const width = textWidth(text, ground.size);
    for (const away of AWAY) {
      const least = away + (SHORTER[shorter] ?? 0);
      if (best && least >= best.cost) break;
      for (let k = 0; k < DIRECTIONS; k += 1) {
        const found = placeAt(at, { text, width, height }, away, (2 * Math.PI * k) / DIRECTIONS);
        if (!isFree(found.box, ground) || leadHits(at, found.foot, away, ground)) continue;
        const cost = least + HIDDEN * hides(found.box);
        if (!best || cost < best.cost) best = { found, cost };
      }
    }
  }
  return best?.found;
}

function placeAt(
  at: Point,
  {
    text,
    width,
    height,
  }: { readonly text: string; readonly width: number; readonly height: number },
  away: number,
  angle: number,
): Found {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const foot = { x: at.x + away * cos, y: at.y + away * sin };
  const box = {
    x: foot.x + ((cos - 1) * width) / 2,
    y: foot.y + ((sin - 1) * height) / 2,
    width,
    height,
  };
  return { text, box, away, foot };
}

/** Counts points in a box, by squares of the paper. */
function hiddenIn(points: readonly Point[]): (box: Room) => number {
  const counts = new Map<string, number>();
  for (const { x, y } of points) {
    const key = `${Math.floor(x)},${Math.floor(y)}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return (box) => {
    let sum = 0;
    for (let x = Math.floor(box.x); x < box.x + box.width; x += 1) {
      for (let y = Math.floor(box.y); y < box.y + box.height; y += 1) {
        sum += Math.min(1, counts.get(`${x},${y}`) ?? 0);
      }
    }
    return sum;
  };
}

/** Points along the lines and circles of a drawing on paper, no farther apart than half a mm. */
export function drawnPoints(marks: readonly Mark[]): readonly Point[] {
  return marks.flatMap((mark): readonly Point[] => {
    if (mark.kind !== 'line' || mark.look.ink === null) return [];
    const ring = mark.closed ? [...mark.points, ...mark.points.slice(0, 1)] : mark.points;
    return ring.flatMap((to, i) => {
      const from = ring[i - 1] ?? to;
      const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 0.5));
      return Array.from({ length: parts }, (_, k) => ({
        x: from.x + ((to.x - from.x) * (k + 1)) / parts,
        y: from.y + ((to.y - from.y) * (k + 1)) / parts,
      }));
    });
  });
}

const isFree = (box: Room, { room, boxes, leads }: Ground): boolean =>
  box.x >= room.x &&
  box.y >= room.y &&
  box.x + box.width <= room.x + room.width &&
  box.y + box.height <= room.y + room.height &&
  !boxes.some((other) => overlaps(grown(box), other)) &&
  !leads.some(([a, b]) => passes(a, b, grown(box)));

const leadHits = (
  at: Point,
  foot: Point,
  away: number,
  { boxes, leads, isStrict }: Ground,
): boolean =>
  isStrict &&
  away >= LED_FROM &&
  (boxes.some((box) => passes(at, foot, box)) || leads.some(([a, b]) => cross(at, foot, a, b)));

/** Whether two lines cross. */
function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point): number =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

const grown = ({ x, y, width, height }: Room): Room => ({
  x: x - GAP,
  y: y - GAP,
  width: width + 2 * GAP,
  height: height + 2 * GAP,
});

/** Whether two rooms share paper. */
export const overlaps = (a: Room, b: Room): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Whether a line passes through a room (Liang and Barsky's clipping). */
function passes(a: Point, b: Point, box: Room): boolean {
  let [from, to] = [0, 1];
  const sides: readonly (readonly [number, number])[] = [
    [a.x - b.x, a.x - box.x],
    [b.x - a.x, box.x + box.width - a.x],
    [a.y - b.y, a.y - box.y],
    [b.y - a.y, box.y + box.height - a.y],
  ];
  for (const [toward, room] of sides) {
    if (toward === 0) {
      if (room < 0) return false;
    } else if (toward < 0) from = Math.max(from, room / toward);
    else to = Math.min(to, room / toward);
  }
  return from < to;
}

/** Within this distance things crowd each other, mm. */
const CROWD = 15;

const neighbours = ({ at }: PaperLabel, labels: readonly PaperLabel[]): number =>
  labels.filter((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y) < CROWD).length;

const leadMark = (points: readonly [Point, Point]): Mark => ({
  kind: 'line',
  layer: 'LABELS',
  points,
  closed: false,
  look: line(0.12, 0.2),
});

/** White paper under the letters keeps them legible over lines. */
const labelMarks = ({ text, box }: Found, size: Mm): readonly Mark[] => [
  {
    kind: 'line',
    layer: 'LABELS',
    points: corners(box),
    closed: true,
    look: { ink: null, width: 0, fill: 1, dash: [] },
  },
  {
    kind: 'text',
    layer: 'LABELS',
    at: { x: box.x, y: box.y + ASCENT * size },
    text,
    size,
    anchor: 'start',
    bold: false,
    ink: 0,
  },
];

/** The corners of a room, for drawing it. */
export const corners = ({ x, y, width, height }: Room): readonly Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
