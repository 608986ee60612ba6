import type { Layout } from '../layout/layout.ts';
import { micName } from '../layout/mics/micName.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import { type Judgement, judgementOf } from '../report/judgement.ts';
import type { Moment } from '../report/moment.ts';
import type { ClearanceRow, Report } from '../report/report.ts';
import type { RingOfMic, RingPlace } from '../report/ring.ts';
import type { SeenFrom, Standpoint } from '../rig/standpoint.ts';
import type { PlanMarks } from '../session/patchView.ts';
import { isThere, type Selection, sameSelection } from '../session/selection.ts';
import type { Drawing } from '../session/session.ts';
import { type Judged, showClearance } from '../units/clearanceText.ts';
import { directionText } from '../units/clock.ts';
import { type LengthUnit, roundedDown, showLength } from '../units/lengthText.ts';
import type { Mm } from '../units/quantity.ts';
import type { Verdict } from './palette.ts';
import { wholeArcs } from './rim/arcs.ts';

/** The few words the plan itself says: on its labels, its buttons and to a screen reader. */

export const verdictWords: Readonly<Record<Verdict, string>> = {
  clear: 'clear',
  tight: 'tight',
  struck: 'struck',
};

type Stuck = Exclude<Judgement, Verdict>;

/** What is said of a mic that can't stay, in place of its verdict. */
export const stuckWords: Readonly<Record<Stuck, string>> = {
  'in-the-way': 'in the way',
  'not-held': "won't hold",
  'near-player': 'near the player',
};

/** Whether a mic can't stay where it is. */
export const isStuck = (judged: Judgement): judged is Stuck => judged in stuckWords;

/** What is written at an arc of a rim ring: what the clip would be there, which is not what any mic is. */
export const arcText = (verdict: Verdict): string => `here: ${verdictWords[verdict]}`;

/** What the marks on the plan mean. */
export const marksText: Readonly<Record<PlanMarks['shows'], string>> = {
  lineCheck:
    'Line check by channel: ✓\u00a0passed, ✗\u00a0failed, –\u2060\u00a0skipped, ○\u00a0to\u00a0check',
  swap: 'Numbered: what to undo, in order',
};

/** The name of what is selected. */
export function nameOfSelection(layout: Layout, selection: Selection): string {
  switch (selection.kind) {
    case 'piece':
      return layout.pieces.find(({ id }) => id === selection.id)?.name ?? 'Piece';
    case 'mic':
      return layout.mics.find(({ id }) => id === selection.id)?.name ?? 'Mic';
    case 'box':
      return 'Box';
    case 'deck':
      return 'Deck';
    case 'player':
      return 'Player';
  }
}

/** How what lies over or below the selected thing is reached; undefined where nothing does. */
export function againText(
  layout: Layout,
  here: readonly Selection[],
  selection: Selection | null,
): string | undefined {
  const things = here.filter((thing) => isThere(thing, layout));
  const at = things.findIndex((thing) => sameSelection(thing, selection));
  const next = things[(at + 1) % things.length];
  if (at < 0 || things.length < 2 || !next) return undefined;
  return `${at + 1} of ${things.length} here. Tap again: ${toldApart(layout, next)}`;
}

/** A name that tells a piece from the mic that has the same. */
function toldApart(layout: Layout, thing: Selection): string {
  const name = namedKind(layout, thing);
  const piece = thing.kind === 'piece' && layout.pieces.find(({ id }) => id === thing.id);
  if (!piece || !layout.mics.some((mic) => mic.name === name)) return name;
  return `${name}, the ${isDrum(piece) || piece.kind === 'kick' ? 'drum' : 'piece'}`;
}

/** Said for a moment when a drag was taken back: by a second finger (T3), or because the drawing lies elsewhere under the finger. */
export const TAKEN_BACK = {
  secondFinger: 'Move taken back: a second finger came down',
  turned: 'Move taken back: the tablet was turned',
} as const;

/** What lies beyond an edge of the plan. */
export function offViewText(layout: Layout, things: readonly Selection[]): string {
  const [only] = things;
  return things.length === 1 && only
    ? `${namedKind(layout, only)} is off the view`
    : `${things.length} things are off the view`;
}

/** A name that says of a mic that it is one: it often has its drum's name. */
function namedKind(layout: Layout, thing: Selection): string {
  const name = nameOfSelection(layout, thing);
  return thing.kind === 'mic' && !/\bmic$/i.test(name) ? `${name} mic` : name;
}

/** What a screen reader hears of the thing that is selected. */
export function spokenSelection(
  layout: Layout,
  report: Report,
  selection: Selection | null,
): string {
  if (selection === null) return 'Nothing selected';
  const name = nameOfSelection(layout, selection);
  if (selection.kind === 'mic') {
    const row = report.clearances.find(({ mic }) => mic === selection.id);
    const judged = row && judgementOf(row, report);
    if (judged && isStuck(judged)) return `${name}, mic: ${stuckWords[judged]}`;
    return row ? `${name}, mic: ${spokenVerdict(row, layout)}` : `${name}, mic`;
  }
  const where = placeOf(layout, selection);
  return where ? `${name}, at ${where}` : name;
}

const spokenVerdict = (
  { verdict, clearance }: Pick<ClearanceRow, 'verdict' | 'clearance'>,
  judged: Judged,
): string =>
  Number.isFinite(clearance)
    ? `${verdictWords[verdict]}, ${showClearance(clearance, judged)}`
    : `${verdictWords[verdict]}, nothing moves near it`;

function placeOf(layout: Layout, selection: Selection): string | undefined {
  const unit = layout.units;
  const spot = (x: Mm, y: Mm): string =>
    `${showLength(x, unit)} to the player's right, ${showLength(y, unit)} forward`;
  if (selection.kind === 'box') return spot(layout.box.x, layout.box.y);
  if (selection.kind !== 'piece') return undefined;
  const piece = layout.pieces.find(({ id }) => id === selection.id);
  return piece && 'x' in piece ? spot(piece.x, piece.y) : undefined;
}

const movingParts: Readonly<Record<NonNullable<ClearanceRow['nearest']>['part'], string>> = {
  stick: 'stick',
  hand: 'hand',
  forearm: 'forearm',
  thigh: 'thigh',
  shin: 'shin',
  cymbal: 'swinging cymbal',
};

/** The label at the place of least clearance: `31 mm, left stick`. */
export function nearestText(row: ClearanceRow, judged: Judged): string {
  const { clearance, nearest } = row;
  if (!nearest) return showClearance(clearance, judged);
  return momentText({ clearance, part: nearest.part }, nearest.movement, judged);
}

/** The label at another moment of the move: `84 mm, left hand`. */
export function momentText(
  { clearance, part }: Pick<Moment, 'clearance' | 'part'>,
  movement: NonNullable<ClearanceRow['nearest']>['movement'],
  judged: Judged,
): string {
  const side =
    movement.kind === 'leg' ? movement.foot : movement.kind === 'swing' ? '' : movement.hand;
  return `${showClearance(clearance, judged)}, ${`${side} ${movingParts[part]}`.trim()}`;
}

/** What the buttons and the slider of the move that comes nearest say. */
export const moveWords = {
  show: 'Show the move',
  name: 'The move that comes nearest',
  moment: 'Moment of the move',
  step: 'Step through the move',
  close: 'Close the move',
} as const;

/** The same of a cymbal's swing. */
export const swingWords = {
  show: 'Show the swing',
  name: 'The swing that comes nearest',
  moment: 'Moment of the swing',
  step: 'Step through the swing',
  close: 'Close the swing',
} as const;

/** Said where the move that comes nearest would be shown. */
export const LEG_AT_REST = 'A leg at rest comes nearest: no move to show.';

/** How near the arm or the cymbal is at a moment of the move, beside the slider. */
export const spokenMoment = (
  { clearance, verdict }: Pick<Moment, 'clearance' | 'verdict'>,
  judged: Judged,
): string => `${showClearance(clearance, judged)}, ${verdictWords[verdict]}`;

/** The same at the nearest moment, where it stops when it is played. */
export const atNearest = (moment: string): string => `Nearest: ${moment}`;

const keyVerbs = {
  nudge: 'Move',
  turn: 'Turn',
  lean: 'Lean',
  raise: 'Raise',
  mast: 'Raise the mast of',
  remove: 'Remove',
} as const;

/** What a key did, for the undo button. */
export const keyLabel = (
  layout: Layout,
  selection: Selection,
  what: keyof typeof keyVerbs,
): string => {
  const mic = selection.kind === 'mic' && layout.mics.find(({ id }) => id === selection.id);
  const name = mic ? micName(mic, layout.pieces) : nameOfSelection(layout, selection);
  return `${keyVerbs[what]} ${name}`;
};

/** The names of the drawings, and of all of them. */
export const planName = 'Plan of the deck';
export const drawingsName = 'Plan and elevations';
export function elevationName({
  facing,
  seenFrom,
}: Pick<Standpoint, 'facing' | 'seenFrom'>): string {
  if (facing === 'side') return 'Side elevation';
  return seenFrom === 'house' ? 'Front elevation' : 'Rear elevation';
}

/** From where an elevation is looked, the fullest words first. */
export function elevationTitle({
  facing,
  seenFrom,
}: Pick<Standpoint, 'facing' | 'seenFrom'>): readonly string[] {
  if (facing === 'side') return ["From the player's right, audience →", 'Side, audience →'];
  return seenFrom === 'house'
    ? ['From the front, as the audience sees it', 'From the front']
    : ['From behind the player', 'From behind'];
}

/** What each drawing is called; whom the kit is seen by is before it or behind it. */
export const drawingWords = (seenFrom: SeenFrom): Readonly<Record<Drawing, string>> => {
  const across = seenFrom === 'house' ? 'Front' : 'Back';
  return {
    plan: 'Plan',
    front: across,
    side: 'Side',
    planAndFront: `Plan + ${across.toLowerCase()}`,
    planAndSide: 'Plan + side',
  };
};

/** The keys that the plan answers to, and what they do. */
export const planKeys: readonly (readonly [keys: string, what: string])[] = [
  ['Tab, Shift Tab', 'go from thing to thing'],
  ['Arrows', 'move by 10 mm; with Shift by 1, with Alt by 50'],
  ['Control arrows', "move a mic's base or a piece's stand"],
  ['Up, Down in an elevation', 'raise and lower; with Control the mast'],
  ['[ and ]', 'turn by 5 degrees; with Shift by 1, with Alt the feet'],
  [', and .', 'lean by 5 degrees; with Shift by 1'],
  ['Page Up, Page Down', 'raise and lower by 10 mm; with Shift by 1, with Alt by 50'],
  ['Delete', 'remove'],
  ['+, -, 0', 'zoom in, zoom out, fit'],
  ['Escape', 'take a drag back, let go; once more, then Tab leaves the plan'],
];

export const spokenKeys = planKeys.map(([keys, what]) => `${keys}: ${what}.`).join(' ');

/** How far the contours can be trusted, in short (rules F1 and F2). */
export const floorTrust = (unit: LengthUnit): string =>
  `Stick floor, up to ${showLength(15, unit)} too low`;

/** What the contours mean, and all about how far they can be trusted. */
export const floorText = (unit: LengthUnit): string =>
  `The lowest height that sticks, hands and forearms pass, ${unit} over the deck: at or below the true height, by at most ${showLength(15, unit)}; lines on the safe side. Tap a spot of the plan for its height.`;

/** What passes over a spot of the plan: `sticks from 742 mm`. */
export const floorSpotText = (height: Mm, unit: LengthUnit): string =>
  Number.isFinite(height)
    ? `sticks, hands from ${showLength(roundedDown(height, unit), unit)}`
    : 'no stick or hand here';

/** What the hatch on the plan means; of the zone of before a change only its broken edge is drawn. */
export const zoneText = (height: Mm, unit: LengthUnit, isOld: boolean): string =>
  isOld
    ? `Before this change: struck with its tip at ${showLength(height, unit)}`
    : `Struck with its tip here, ${showLength(height, unit)} high`;

/** What is said where they are wanted and have not come: nothing drawn must not be taken for nothing there. */
export const zoneLate = 'Struck zone: not worked out yet';
export const floorLate = 'Stick floor: not worked out yet';

/** Over a drawing of what is only offered, and what its broken lines mean. */
export const offerText = {
  only: 'Only shown: nothing is changed yet',
  ghost: 'Broken line: where it is now',
  leave: 'Leave it',
} as const;

/** Said at a cable for which no way keeps clear, and what its broken line means. */
export const noWay = 'no way';
export const noWayText = (cables: number): string =>
  cables === 1
    ? 'No way for 1 cable: where it would pass through something'
    : `No way for ${cables} cables: where they would pass through something`;

/** What a clip would be at a place of its rim. */
export const ringPlaceText = (
  { clearance, verdict, angle }: Pick<RingPlace, 'clearance' | 'verdict' | 'angle'>,
  name: string,
  judged: Judged,
): string => `${name} at ${directionText(angle)}: ${spokenVerdict({ verdict, clearance }, judged)}`;

/** Said of a clip that is proposed where its cable finds no free way, because no other place that is as clear has one. */
export const NO_CABLE_WAY =
  'Its cable finds no free way to the box, from there or from any other place that is as clear.';

/** What the ring of a drum without a clip is for. */
export const plannedText = (drum: string, micClass: string): string =>
  `No clip mic on ${drum} yet: the ring is for a ${micClass.toLowerCase()}.`;

/** What a rim ring says, arc by arc, for those who can't see it. */
export function ringText({ arcs, planned }: Pick<RingOfMic, 'arcs' | 'planned'>): string {
  const parts = wholeArcs(arcs).map(
    ({ verdict, from, to }) =>
      `${verdictWords[verdict]} from ${directionText(from)}, to ${directionText(to)}`,
  );
  const whose = planned ? 'For a clip mic that is not placed yet. ' : '';
  return `${whose}Round the rim, 0° or 3 o'clock to the player's right, 90° or 12 o'clock to the audience: ${parts.join('; ')}.`;
}
