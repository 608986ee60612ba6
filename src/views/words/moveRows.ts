import type { Mic } from '../../layout/mics/mic.ts';
import type { ClipMount, Mount, StandMount } from '../../layout/mics/mount.ts';
import { turnBetween, wrapDegrees } from '../../units/angle.ts';
import { oClockText } from '../../units/clock.ts';
import { type LengthUnit, showLength } from '../../units/lengthText.ts';
import { mountWords } from './kindWords.ts';
import { inSentence } from './nameOf.ts';

/** One number of a mic that a change gives another value: what it is, as it is, as it would be, and by how much. */
export interface MoveRow {
  readonly what: string;
  readonly from: string;
  readonly to: string;
  readonly by: string;
  /** As it is and as it would be, in a line: `points 70° down, then 36° down`. */
  readonly said: string;
}

/** Smaller differences are not shown: mm and degrees. */
export const SEEN = 0.05;

/** What is another for a mic, number by number; empty where nothing is. */
export function moveRows(before: Mic, after: Mic, unit: LengthUnit): readonly MoveRow[] {
  const [now, then] = [before.mount, after.mount];
  if (now.kind === 'clip' && then.kind === 'clip') return clipRows(now, then, unit);
  if (now.kind === 'stand' && then.kind === 'stand') return standRows(now, then, unit);
  if (now.kind === 'plateInKick' && then.kind === 'plateInKick') {
    return lengthRow('Behind the front head', [now.depth, then.depth], unit);
  }
  if (now.kind === 'plateOnDeck' && then.kind === 'plateOnDeck') {
    return [...spotRows('Plate', now, then, unit), ...directionRow('Faces', [now.turn, then.turn])];
  }
  return [heldRow(now, then)];
}

const clipRows = (now: ClipMount, then: ClipMount, unit: LengthUnit): MoveRow[] => [
  ...directionRow('Round the rim', [now.angle, then.angle]),
  ...lengthRow('Above the head', [now.height, then.height], unit),
  ...lengthRow('Inside the rim', [now.reach, then.reach], unit),
  ...pitchRow([now.pitch, then.pitch]),
];

function standRows(now: StandMount, then: StandMount, unit: LengthUnit): MoveRow[] {
  const stand = now.stand !== then.stand;
  return [
    ...(stand ? [heldRow(now, then)] : []),
    ...spotRows('Tip', now.tip, then.tip, unit),
    ...lengthRow('Height of the tip', [now.tip.z, then.tip.z], unit),
    ...directionRow('Points toward', [now.azimuth, then.azimuth]),
    ...pitchRow([0 - now.pitch, 0 - then.pitch]),
    ...mastRow(now, then, unit),
    ...spotRows('Base', now.base, then.base, unit),
    ...turnRow('First foot toward', [now.turn, then.turn]),
  ];
}

type Pair = readonly [from: number, to: number];
interface Spot {
  readonly x: number;
  readonly y: number;
}

const spotRows = (what: string, now: Spot, then: Spot, unit: LengthUnit): MoveRow[] => [
  ...lengthRow(`${what}, right of the throne`, [now.x, then.x], unit),
  ...lengthRow(`${what}, in front of the throne`, [now.y, then.y], unit),
];

function lengthRow(what: string, [now, then]: Pair, unit: LengthUnit): MoveRow[] {
  if (Math.abs(then - now) < SEEN) return [];
  const shown = (length: number): string => minus(showLength(length, unit));
  return [row(what, shown(now), shown(then), signed(then - now, shown))];
}

/** What a number was, and then is: a change alone reads like an aim of its own. */
const row = (what: string, from: string, to: string, by: string): MoveRow => ({
  ...{ what, from, to, by },
  said: `${inSentence(what)} ${from}, then ${to}`,
});

const heldRow = (now: Mount, then: Mount): MoveRow =>
  row('Held by', inSentence(mountWords(now)), inSentence(mountWords(then)), '');

/** How far down a mic points: said alike whatever holds it. */
function pitchRow([now, then]: Pair): MoveRow[] {
  if (Math.abs(then - now) < SEEN) return [];
  const steep = (down: number): string =>
    Math.abs(down) < SEEN ? 'level' : `${degreesText(Math.abs(down))} ${down > 0 ? 'down' : 'up'}`;
  return [
    {
      ...row(
        'Points down by',
        degreesText(now),
        degreesText(then),
        signed(then - now, degreesText),
      ),
      said: `points ${steep(now)}, then ${steep(then)}`,
    },
  ];
}

/** Directions go round: the short way from one to the other. */
function turnRow(what: string, [now, then]: Pair): MoveRow[] {
  const by = turnBetween(now, then);
  if (Math.abs(by) < SEEN) return [];
  const shown = (angle: number): string => degreesText(wrapDegrees(angle));
  return [row(what, shown(now), shown(then), signed(by, degreesText))];
}

/** Where the mic sits on a rim or points: said as a clock too. */
const directionRow = (what: string, [now, then]: Pair): MoveRow[] =>
  turnRow(what, [now, then]).map((turn) => ({
    ...turn,
    from: `${turn.from}, about ${oClockText(now)}`,
    to: `${turn.to}, about ${oClockText(then)}`,
    said: `${turn.said} (about ${oClockText(then)})`,
  }));

function mastRow(now: StandMount, then: StandMount, unit: LengthUnit): MoveRow[] {
  if (now.mast === then.mast) return [];
  const shown = (mast: number | null): string =>
    mast === null ? 'follows' : showLength(mast, unit);
  return [row('Height of the mast', shown(now.mast), shown(then.mast), '')];
}

/** An angle to a tenth: `12.5°`. */
export const degreesText = (angle: number): string =>
  `${minus(String(Math.round(angle * 10) / 10 + 0))}°`;
const minus = (text: string): string => text.replace('-', '−');
const signed = (by: number, shown: (value: number) => string): string =>
  `${by > 0 ? '+' : '−'}${shown(Math.abs(by))}`;
