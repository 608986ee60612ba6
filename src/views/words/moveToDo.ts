import type { Mic } from '../../layout/mics/mic.ts';
import type { ClipMount, Mount, StandMount } from '../../layout/mics/mount.ts';
import { turnBetween } from '../../units/angle.ts';
import { type LengthUnit, leastShown, showLength } from '../../units/lengthText.ts';
import { mountWords } from './kindWords.ts';
import { degreesText, SEEN } from './moveRows.ts';
import { capitalised, inSentence, listed } from './nameOf.ts';

/**
 * What a hand does to bring a mic from one place to the other, in a sentence: `Turn it 12° clockwise round the rim (seen from above) and set it 15 mm higher.`
 * Right and left are the player's, turns are those that one sees from above, so that it reads the same on either side of the kit. Empty where nothing
 * is another.
 */
export function moveToDo(before: Mic, after: Mic, unit: LengthUnit): string {
  const parts = partsOf(before.mount, after.mount, (length) => shownLength(length, unit));
  return parts.length === 0 ? '' : `${capitalised(listed(parts))}.`;
}

/** A length without its sign; never `0 mm` for what is another. */
function shownLength(length: number, unit: LengthUnit): string {
  const far = Math.abs(length);
  const least = leastShown(unit);
  return far < least / 2 ? `less than ${showLength(least, unit)}` : showLength(far, unit);
}

type Shown = (length: number) => string;

function partsOf(now: Mount, then: Mount, shown: Shown): readonly string[] {
  if (now.kind === 'clip' && then.kind === 'clip') return clipParts(now, then, shown);
  if (now.kind === 'stand' && then.kind === 'stand') return standParts(now, then, shown);
  if (now.kind === 'plateInKick' && then.kind === 'plateInKick') {
    return change(now.depth, then.depth, (by) =>
      by > 0
        ? `lay it ${shown(by)} deeper into the kick drum`
        : `lay it ${shown(by)} nearer to the front head`,
    );
  }
  if (now.kind === 'plateOnDeck' && then.kind === 'plateOnDeck') {
    return [...shift('it', now, then, shown), ...turn('it', now.turn, then.turn)];
  }
  return [`hold it by ${inSentence(mountWords(then))}`];
}

const clipParts = (now: ClipMount, then: ClipMount, shown: Shown): readonly string[] => [
  ...turn('it', now.angle, then.angle, ' round the rim'),
  ...lift(now.height, then.height, shown),
  ...change(now.reach, then.reach, (by) =>
    by > 0
      ? `push it ${shown(by)} farther in over the head`
      : `draw it ${shown(by)} back toward the rim`,
  ),
  ...tilt(-now.pitch, -then.pitch),
];

const standParts = (now: StandMount, then: StandMount, shown: Shown): readonly string[] => [
  ...(now.stand === then.stand ? [] : [`put it on ${inSentence(mountWords(then))}`]),
  ...shift('the base', now.base, then.base, shown),
  ...turn('its feet', now.turn, then.turn),
  ...(now.mast === then.mast
    ? []
    : [then.mast === null ? 'level the boom' : `set the mast ${shown(then.mast)} high`]),
  ...shift('the mic', now.tip, then.tip, shown),
  ...lift(now.tip.z, then.tip.z, shown),
  ...turn('the mic', now.azimuth, then.azimuth),
  ...tilt(now.pitch, then.pitch),
];

function change(now: number, then: number, say: (by: number) => string): readonly string[] {
  const by = then - now;
  return Math.abs(by) < SEEN ? [] : [say(by)];
}

const lift = (now: number, then: number, shown: Shown): readonly string[] =>
  change(now, then, (by) => `set it ${shown(by)} ${by > 0 ? 'higher' : 'lower'}`);

const tilt = (now: number, then: number): readonly string[] =>
  change(
    now,
    then,
    (by) => `tilt its front ${degreesText(Math.abs(by))} ${by > 0 ? 'up' : 'down'}`,
  );

/** Directions grow against the clock. */
function turn(what: string, now: number, then: number, where = ''): readonly string[] {
  return change(0, turnBetween(now, then), (by) => {
    const way = by > 0 ? 'anticlockwise' : 'clockwise';
    return `turn ${what} ${degreesText(Math.abs(by))} ${way}${where} (seen from above)`;
  });
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Over the plan: the kit's x goes to the player's right, its y to the audience. */
function shift(what: string, now: Spot, then: Spot, shown: Shown): readonly string[] {
  const ways = [
    ...change(now.x, then.x, (by) => `${shown(by)} to the player's ${by > 0 ? 'right' : 'left'}`),
    ...change(now.y, then.y, (by) => `${shown(by)} toward the ${by > 0 ? 'audience' : 'player'}`),
  ];
  return ways.length === 0 ? [] : [`move ${what} ${ways.join(' and ')}`];
}
