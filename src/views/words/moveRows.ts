import type { Mic } from '../../layout/mics/mic.ts';
import type { ClipMount, StandMount } from '../../layout/mics/mount.ts';
import { turnBetween, wrapDegrees } from '../../units/angle.ts';
import { oClockText } from '../../units/clock.ts';
import { type LengthUnit, showLength } from '../../units/lengthText.ts';
import { mountWords } from './kindWords.ts';

/** One number of a mic that a change gives another value: what it is, as it is, as it would be, and by how much. */
export interface MoveRow {
  readonly what: string;
  readonly from: string;
  readonly to: string;
  readonly by: string;
  /** Of a direction of the mic: where it would be on the clock that the player sees. */
  readonly toward?: string;
}

/** Smaller differences are not shown: mm and degrees. */
const SEEN = 0.05;

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
  return [{ what: 'Held by', from: mountWords(now), to: mountWords(then), by: '' }];
}

const clipRows = (now: ClipMount, then: ClipMount, unit: LengthUnit): MoveRow[] => [
  ...directionRow('Round the rim', [now.angle, then.angle]),
  ...lengthRow('Above the head', [now.height, then.height], unit),
  ...lengthRow('Inside the rim', [now.reach, then.reach], unit),
  ...angleRow('Points down by', [now.pitch, then.pitch]),
];

function standRows(now: StandMount, then: StandMount, unit: LengthUnit): MoveRow[] {
  const stand = now.stand !== then.stand;
  return [
    ...(stand ? [{ what: 'Held by', from: mountWords(now), to: mountWords(then), by: '' }] : []),
    ...spotRows('Tip', now.tip, then.tip, unit),
    ...lengthRow('Height of the tip', [now.tip.z, then.tip.z], unit),
    ...directionRow('Points toward', [now.azimuth, then.azimuth]),
    ...angleRow('Points up by', [now.pitch, then.pitch]),
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
  return [{ what, from: shown(now), to: shown(then), by: signed(then - now, shown) }];
}

function angleRow(what: string, [now, then]: Pair): MoveRow[] {
  if (Math.abs(then - now) < SEEN) return [];
  return [{ what, from: degrees(now), to: degrees(then), by: signed(then - now, degrees) }];
}

/** Directions go round: the short way from one to the other. */
function turnRow(what: string, [now, then]: Pair): MoveRow[] {
  const by = turnBetween(now, then);
  if (Math.abs(by) < SEEN) return [];
  const shown = (angle: number): string => degrees(wrapDegrees(angle));
  return [{ what, from: shown(now), to: shown(then), by: signed(by, degrees) }];
}

/** Where the mic sits on a rim or points: said as a clock too. */
const directionRow = (what: string, [now, then]: Pair): MoveRow[] =>
  turnRow(what, [now, then]).map((row) => ({
    ...row,
    from: `${row.from}, about ${oClockText(now)}`,
    to: `${row.to}, about ${oClockText(then)}`,
    toward: oClockText(then),
  }));

function mastRow(now: StandMount, then: StandMount, unit: LengthUnit): MoveRow[] {
  if (now.mast === then.mast) return [];
  const shown = (mast: number | null): string =>
    mast === null ? 'follows' : showLength(mast, unit);
  return [{ what: 'Height of the mast', from: shown(now.mast), to: shown(then.mast), by: '' }];
}

const degrees = (angle: number): string => `${minus(String(Math.round(angle * 10) / 10 + 0))}°`;
const minus = (text: string): string => text.replace('-', '−');
const signed = (by: number, shown: (value: number) => string): string =>
  `${by > 0 ? '+' : '−'}${shown(Math.abs(by))}`;
