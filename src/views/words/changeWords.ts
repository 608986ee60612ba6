import { findMicClass } from '../../layout/catalogue/micClasses.ts';
import type { Difference } from '../../layout/differences.ts';
import type { Layout } from '../../layout/layout.ts';
import { micName } from '../../layout/mics/micName.ts';
import type { KitChanges, ThingChange } from '../../report/compareKits.ts';
import { type LengthUnit, leastShown, showLength } from '../../units/lengthText.ts';
import { handNames, hiHatNames } from './handWords.ts';
import { HOLDING, mountChangeWords } from './mountChangeWords.ts';
import { capitalised, inSentence, listed } from './nameOf.ts';

/** What a field is called where its own name says too little. Lengths in mm and angles in degrees end in their unit's kind. */
const fieldNames: Readonly<Record<string, readonly [string, 'mm' | 'deg' | 'plain']>> = {
  micClass: ['class', 'plain'],
  'mount.mast': ['mast', 'mm'],
  'mount.turn': ['feet', 'deg'],
  diameter: ['diameter', 'mm'],
  depth: ['depth', 'mm'],
  opening: ['opening', 'mm'],
  hands: ['played by', 'plain'],
  'support.turn': ['feet', 'deg'],
  'support.spread': ['spread of the feet', 'mm'],
  'support.kind': ['carried by', 'plain'],
  'support.by': ['held by', 'plain'],
  name: ['name', 'plain'],
  stature: ['stature', 'mm'],
  seatHeight: ['seat', 'mm'],
  leadHand: ['lead hand', 'plain'],
  hiHat: ['hi-hat', 'plain'],
  strokeHeight: ['stroke', 'mm'],
  lean: ['lean', 'mm'],
  'stick.length': ['stick length', 'mm'],
  'stick.diameter': ['stick thickness', 'mm'],
  'stick.butt': ['grip', 'mm'],
};

/** What a choice is called. */
const choices: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  hands: handNames,
  hiHat: hiHatNames,
  'support.kind': { stand: 'a stand', legs: 'legs on its shell', held: 'held by another piece' },
};

/** Fields that say where a thing is or faces: distance and angle tell those. */
const PLACES = new Set([
  ...['x', 'y', 'z', 'tilt', 'tiltToward', 'turn', 'rise', 'support.dx', 'support.dy'],
  ...['mount.x', 'mount.y', 'mount.tip.x', 'mount.tip.y', 'mount.tip.z', 'mount.azimuth'],
  ...['mount.base.x', 'mount.base.y', 'mount.pitch', 'mount.angle', 'mount.reach', 'mount.height'],
  'mount.depth',
]);

/**
 * How one mic or piece is not as it was: `moved 32 mm, turned 4°`, `moved from a rubber rim clip on the snare to a tall tripod boom, by 80 mm`.
 * `nameOf` tells what an id is called.
 */
export function thingChangeWords(
  change: ThingChange,
  unit: LengthUnit,
  nameOf: (id: string) => string = plainName,
): string {
  if (change.change === 'new') return 'is new';
  if (change.change === 'gone') return 'is gone';
  const { moved, turned, base, fields } = change;
  const held = mountChangeWords(fields, nameOf);
  const far = moved > 0 ? [atLeast(moved, unit)] : [];
  const parts = [
    ...(held === undefined
      ? far.map((by) => `moved ${by}`)
      : [`moved ${held}`, ...far.map((by) => `by ${by}`)]),
    ...(turned > 0
      ? [`turned ${turned < 0.1 ? 'less than 0.1' : Number(turned.toFixed(1))}°`]
      : []),
    ...(base > 0 && Math.abs(base - moved) > 0.5 ? [`its stand moved ${atLeast(base, unit)}`] : []),
    ...fieldWords(fields, unit, nameOf),
  ];
  const with_ = fields.length === 0 ? ['with what carries it'] : [];
  return parts.length > 0 ? [...parts, ...with_].join(', ') : 'is not as it was';
}

/** Differences that are no place, in words; of the same name each once. */
function fieldWords(
  fields: readonly Difference[],
  unit: LengthUnit,
  nameOf: (id: string) => string,
): readonly string[] {
  // What a mount of another kind has of its own says nothing beside what the mount was and is.
  const isOther = fields.some(({ path }) => path === 'mount.kind');
  const told = fields.filter(
    ({ path }) =>
      !PLACES.has(path) && !HOLDING.has(path) && !(isOther && path.startsWith('mount.')),
  );
  const words = told.map((difference) => differenceWords(difference, unit, nameOf));
  return [...new Set(words)];
}

/** `stature 1750 mm → 1820 mm`. */
export function differenceWords(
  { path, before, after }: Difference,
  unit: LengthUnit,
  nameOf: (id: string) => string = plainName,
): string {
  const [top = path] = path.split('.');
  if (top === 'hears') return 'what it must hear';
  const known = fieldNames[path];
  if (!known) return plainName(path);
  const [name, kind] = known;
  const show = (value: Difference['before']): string => {
    if (value === undefined || value === null) return kind === 'mm' ? 'free' : 'none';
    if (path in choices)
      return inSentence(choices[path]?.[String(value)] ?? plainName(String(value)));
    if (path === 'micClass' || path === 'support.by') return inSentence(nameOf(String(value)));
    if (typeof value !== 'number') return plainName(String(value));
    if (kind === 'mm') return showLength(value, unit);
    return kind === 'deg' ? `${value}°` : String(value);
  };
  return path === 'name' && typeof after === 'string'
    ? `name ${before ?? 'none'} → ${after}`
    : `${name} ${show(before)} → ${show(after)}`;
}

/** `body.kneeHeightSitting` as `knee height sitting`. */
const plainName = (path: string): string =>
  (path.split('.').at(-1) ?? path).replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** A length that is not nothing is never shown as 0. */
const atLeast = (length: number, unit: LengthUnit): string =>
  length < leastShown(unit)
    ? `less than ${showLength(leastShown(unit), unit)}`
    : showLength(length, unit);

/** Everything that changed, a line each: `Snare mic: moved 32 mm, turned 4°`. The player first, then mics, then pieces. */
export function kitChangeLines(
  { player, mics, pieces }: KitChanges,
  layout: Pick<Layout, 'units' | 'pieces' | 'ownClasses'>,
): readonly string[] {
  const known = [...layout.pieces, ...pieces];
  const nameOf = (id: string): string =>
    known.find((piece) => piece.id === id)?.name ?? findMicClass(layout, id)?.name ?? plainName(id);
  const line = (thing: ThingChange): string =>
    `${capitalised(thing.name)}: ${thingChangeWords(thing, layout.units, nameOf)}`;
  const named = (mic: ThingChange): ThingChange => ({ ...mic, name: micName(mic, known) });
  const of = listed(player.map((difference) => differenceWords(difference, layout.units)));
  return [
    ...(player.length > 0 ? [`Player: ${of}`] : []),
    ...mics.map(named).map(line),
    ...pieces.map(line),
  ];
}
