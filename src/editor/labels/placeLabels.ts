import type { ScreenPoint, ScreenSize } from '../view/view.ts';
import { crosses, type Line, nearestIn } from './lines.ts';

/** One way to write a label, with the room it takes, px. */
export interface LabelForm {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/**
 * A place for a label relative to what it names, px: the point (x, y) that the label touches, and on which side of that point
 * it lies: (-1, 0) left of it, (0, 0) over it, (0, 1) below it.
 */
export interface LabelSpot {
  readonly x: number;
  readonly y: number;
  readonly sideX: number;
  readonly sideY: number;
  /** What the label names there, where it names another point at every spot, as along a ring. */
  readonly names?: ScreenPoint;
}

/** A label that wants a place. */
export interface LabelWish {
  readonly key: string;
  /** What it names, on the screen. */
  readonly at: ScreenPoint;
  /** Where it may stand, the best first. */
  readonly spots: readonly LabelSpot[];
  /** The fullest first: a shorter one is taken where the fuller finds no room. */
  readonly forms: readonly LabelForm[];
  /** Lower ranks choose first. */
  readonly rank: number;
  /** Whether it names a mic: at a place nearer to another mic's tip it would be read as that one's. */
  readonly points?: true;
  /** How far it keeps from other labels that keep apart, px: many of a kind would be read as one crowd. */
  readonly apart?: number;
  /** A label that must be shown overlaps where no room is left; others are left out. */
  readonly must: boolean;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** What stands there is drawn over labels, as a handle is: it hides them, and they do not hide it. */
  readonly isOver?: true;
}

/** Boxes of what is drawn over labels. */
export const drawnOver = (boxes: readonly Box[]): readonly Box[] =>
  boxes.map((box) => ({ ...box, isOver: true }));

/** The square that reaches `reach` px to each side of a spot. */
export const boxAbout = ({ x, y }: ScreenPoint, reach: number): Box => ({
  left: x - reach,
  top: y - reach,
  width: 2 * reach,
  height: 2 * reach,
});

export interface PlacedLabel {
  readonly key: string;
  readonly at: ScreenPoint;
  readonly form: LabelForm;
  readonly box: Box;
  /** Which of the wish's spots it took. */
  readonly place: number;
  /** Whether a line must lead from it to what it names. */
  readonly led: boolean;
}

export interface LabelGround {
  readonly size: ScreenSize;
  /** Kept free of labels where possible. */
  readonly covered: readonly Box[];
  /** Where something stands over the drawing: no label, unless one that must be shown finds no other room. */
  readonly reserved: readonly Box[];
  /** The places of the last drawing: a label keeps its place while it can, so that nothing jumps during a drag. */
  readonly before: ReadonlyMap<string, number>;
  /** The tips of all mics, on the screen, lettered or not. */
  readonly tips: readonly ScreenPoint[];
}

/** Free px between labels and round the edge of the screen. */
const GAP = 3;

/**
 * Finds places for labels.
 *
 * L1. No label is cut off by the edge of the screen, as long as it fits on the screen at all.
 * L2. No two labels overlap, except those that must be shown and find no room.
 * L3. A label that names something off the screen is left out: at the edge it would be a fragment that names nothing there.
 * L4. No label stands under what stands over the drawing: one that must be shown and finds no room is moved out of there, as long as there is a way.
 * L5. Of places that hide the same, a label that names a mic takes one that is not nearer to another mic's tip.
 * L6. A label that need not be shown is left out where it and mics would hide much of each other, and where it would lie under anything that is drawn
 *     over labels.
 * L7. Of labels that keep apart, the first to choose stands, and another only as far from it as it keeps.
 * L8. A label that names a mic and is nearer to another mic's tip than to its own has a line to its own, however short; so has any
 *     label that is far from what it names.
 * L9. No label that keeps apart stands on the line of another.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  ground: LabelGround,
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  const kin: PlacedLabel[] = [];
  const lines: Line[] = [];
  const inOrder = [...wishes].sort((a, b) => a.rank - b.rank);
  for (const wish of inOrder) {
    if (!onScreen(wish.at, ground.size)) continue;
    const here = { ...ground, others: wish.points ? ground.tips : [], kin, lines };
    const found =
      freePlace(wish, placed, here) ?? (wish.must ? leastOverlap(wish, placed, here) : undefined);
    if (!found) continue;
    const choice = { ...found, led: isLed(found, here) };
    placed.push(choice);
    if (wish.apart !== undefined) kin.push(choice);
    else if (choice.led) lines.push([choice.at, nearestIn(choice.box, choice.at)]);
  }
  return placed;
}

/** A label in a place of which nobody knows yet whether it is the one. */
type Candidate = Omit<PlacedLabel, 'led'>;

interface Choice {
  readonly label: Candidate;
  readonly cost: number;
}

/** Of two that cost the same, the earlier in the list of spots. */
const cheaper = (best: Choice | undefined, choice: Choice): Choice =>
  best &&
  (best.cost < choice.cost || (best.cost === choice.cost && best.label.place < choice.label.place))
    ? best
    : choice;

function freePlace(
  wish: LabelWish,
  placed: readonly PlacedLabel[],
  ground: Surroundings,
): Candidate | undefined {
  const kept = ground.before.get(wish.key);
  const turns = inTurn(wish.spots.length, kept);
  for (const form of wish.forms) {
    let best: Choice | undefined;
    for (const place of turns) {
      // Nor would any later one be better.
      if (best && best.cost < leastCost(place, kept)) break;
      const label = candidate(wish, form, place);
      if (!label || !isFree(label.box, wish, placed, ground)) continue;
      best = cheaper(best, { label, cost: costOf(label, ground) });
    }
    if (best) return best.label;
  }
  return undefined;
}

/** The shortest form, moved inside the screen and out of what stands over it, where it hides least of other labels. */
function leastOverlap(
  wish: LabelWish,
  placed: readonly PlacedLabel[],
  ground: Surroundings,
): Candidate | undefined {
  const form = wish.forms.at(-1);
  if (!form) return undefined;
  const choices = candidates(wish, form).map((label): Choice => {
    const box = movedOut(movedInside(label.box, ground.size), ground);
    const others = placed.map((other) => other.box);
    const hidden = shared(box, others) + shared(box, ground.reserved);
    return { label: { ...label, box }, cost: hidden * 100 + costOf(label, ground) };
  });
  return choices.reduce<Choice | undefined>(cheaper, undefined)?.label;
}

const candidates = (wish: LabelWish, form: LabelForm): readonly Candidate[] =>
  wish.spots.flatMap((_, place) => candidate(wish, form, place) ?? []);

function candidate(wish: LabelWish, form: LabelForm, place: number): Candidate | undefined {
  const spot = wish.spots[place];
  const { x, y } = wish.at;
  return (
    spot && {
      key: wish.key,
      at: spot.names ? { x: x + spot.names.x, y: y + spot.names.y } : wish.at,
      form,
      place,
      box: {
        left: x + spot.x + ((spot.sideX - 1) * form.width) / 2,
        top: y + spot.y + ((spot.sideY - 1) * form.height) / 2,
        width: form.width,
        height: form.height,
      },
    }
  );
}

/** Px of covered ground that leaving a place, and each step down the list of spots, is worth. */
const MOVE_COST = 5;
const STEP_COST = 30;
/** What it is worth not to stand nearer to another mic's tip. */
const MISTAKEN_COST = 250;

interface Surroundings extends LabelGround {
  /** The mics that this label could be taken to name, its own among them. */
  readonly others: readonly ScreenPoint[];
  /** The labels placed that keep apart. */
  readonly kin: readonly PlacedLabel[];
  /** The lines of the labels placed (L8). */
  readonly lines: readonly Line[];
}

/** How many times worse it is to be hidden than to hide. */
const HIDDEN_COST = 8;
/** A text of which a mic or a handle hides more than this share can't be read. */
const MOST_HIDDEN = 0.25;

const isFree = (
  box: Box,
  { must, apart }: LabelWish,
  placed: readonly PlacedLabel[],
  ground: Surroundings,
): boolean =>
  inside(box, ground.size) &&
  !hits(grown(box, GAP), placed) &&
  (apart === undefined || !hits(grown(box, apart), ground.kin)) &&
  !ground.reserved.some((zone) => overlap(box, zone) > 0) &&
  (must || !isBuried(box, ground.covered)) &&
  (apart === undefined || !ground.lines.some((line) => crosses(line, box)));

const isBuried = (box: Box, covered: readonly Box[]): boolean =>
  shared(box, covered) > MOST_HIDDEN * box.width * box.height ||
  covered.some((other) => other.isOver && overlap(box, other) > 0);

const shared = (box: Box, others: readonly Box[]): number =>
  others.reduce((sum, other) => sum + overlap(box, other), 0);

/** How far a point lies outside a box, px. */
const outside = ({ left, top, width, height }: Box, { x, y }: ScreenPoint): number =>
  Math.hypot(Math.max(left - x, 0, x - left - width), Math.max(top - y, 0, y - top - height));

/** What a place hides; a place other than the last one costs more the later it stands in the list. */
function costOf(label: Candidate, ground: Surroundings): number {
  const covered = ground.covered.reduce(
    (sum, other) => sum + overlap(label.box, other) * (other.isOver ? HIDDEN_COST : 1),
    nearerTips(label, ground) * MISTAKEN_COST,
  );
  return covered + leastCost(label.place, ground.before.get(label.key));
}

/** How many mics it is nearer to than to its own. */
function nearerTips({ box, at }: Candidate, { others }: Surroundings): number {
  const own = outside(box, at);
  let nearer = 0;
  for (const tip of others) if (outside(box, tip) < own) nearer += 1;
  return nearer;
}

/** Labels farther than this from what they name have a line to it, px. */
const FAR = 22;

const isLed = (label: Candidate, ground: Surroundings): boolean =>
  outside(label.box, label.at) >= FAR || nearerTips(label, ground) > 0;

/** What a place costs that hides nothing. */
const leastCost = (place: number, kept: number | undefined): number =>
  place === kept ? 0 : MOVE_COST + place * STEP_COST;

/** So many places, those that can cost least first: while nothing speaks against the place kept, no other is looked at. */
function inTurn(count: number, kept: number | undefined): readonly number[] {
  const all = Array.from({ length: count }, (_, place) => place);
  return kept === undefined || kept >= count
    ? all
    : [kept, ...all.filter((place) => place !== kept)];
}

export const onScreen = (at: ScreenPoint, size: ScreenSize): boolean =>
  at.x >= 0 && at.y >= 0 && at.x <= size.width && at.y <= size.height;

const inside = (box: Box, size: ScreenSize): boolean =>
  box.left >= GAP &&
  box.top >= GAP &&
  box.left + box.width <= size.width - GAP &&
  box.top + box.height <= size.height - GAP;

const hits = (room: Box, placed: readonly PlacedLabel[]): boolean =>
  placed.some((other) => overlap(room, other.box) > 0);

const grown = (box: Box, by: number): Box => ({
  left: box.left - by,
  top: box.top - by,
  width: box.width + 2 * by,
  height: box.height + 2 * by,
});

/** The area that two boxes share, px²; 0 where they only touch. */
export function overlap(a: Box, b: Box): number {
  const wide = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const high = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** Moved toward the middle of the screen's height, out of all that stands over the drawing at its upper and its lower edge. */
function movedOut(box: Box, { reserved, size }: LabelGround): Box {
  let now = box;
  for (const _ of reserved) {
    const zone = reserved.find((one) => overlap(now, one) > 0);
    if (!zone) break;
    const isUpper = zone.top + zone.height / 2 < size.height / 2;
    now = { ...box, top: isUpper ? zone.top + zone.height : zone.top - box.height };
  }
  return now;
}

const movedInside = (box: Box, size: ScreenSize): Box => ({
  ...box,
  left: Math.max(GAP, Math.min(box.left, size.width - GAP - box.width)),
  top: Math.max(GAP, Math.min(box.top, size.height - GAP - box.height)),
});
