import type { Difference } from '../../layout/differences.ts';
import type { Layout } from '../../layout/layout.ts';
import type { KitChanges, ThingChange } from '../../report/compareKits.ts';
import { type LengthUnit, showLength } from '../../units/lengthText.ts';
import { capitalised, listed } from './nameOf.ts';

/** What a field is called where its own name says too little. Lengths in mm and angles in degrees end in their unit's kind. */
const fieldNames: Readonly<Record<string, readonly [string, 'mm' | 'deg' | 'plain']>> = {
  micClass: ['class', 'plain'],
  'mount.kind': ['mount', 'plain'],
  'mount.stand': ['class of stand', 'plain'],
  'mount.mast': ['mast', 'mm'],
  'mount.turn': ['feet', 'deg'],
  'mount.material': ['clip', 'plain'],
  'mount.drum': ['drum', 'plain'],
  'mount.kick': ['kick', 'plain'],
  diameter: ['diameter', 'mm'],
  depth: ['depth', 'mm'],
  opening: ['opening', 'mm'],
  hands: ['played by', 'plain'],
  'support.turn': ['feet', 'deg'],
  'support.spread': ['spread of the feet', 'mm'],
  'support.kind': ['support', 'plain'],
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

/** Fields that say where a thing is or faces: distance and angle tell those. */
const PLACES = new Set([
  ...['x', 'y', 'z', 'tilt', 'tiltToward', 'turn', 'rise', 'support.dx', 'support.dy'],
  ...['mount.x', 'mount.y', 'mount.tip.x', 'mount.tip.y', 'mount.tip.z', 'mount.azimuth'],
  ...['mount.base.x', 'mount.base.y', 'mount.pitch', 'mount.angle', 'mount.reach', 'mount.height'],
  'mount.depth',
]);

/** `moved 32 mm, turned 4°, class of stand tripodLow → tripodTall`: how one mic or piece is not as it was. */
export function thingChangeWords(change: ThingChange, unit: LengthUnit): string {
  if (change.change === 'new') return 'is new';
  if (change.change === 'gone') return 'is gone';
  const { moved, turned, base, fields } = change;
  const parts = [
    ...(moved > 0 ? [`moved ${atLeast(moved, unit)}`] : []),
    ...(turned > 0
      ? [`turned ${turned < 0.1 ? 'less than 0.1' : Number(turned.toFixed(1))}°`]
      : []),
    ...(base > 0 && Math.abs(base - moved) > 0.5 ? [`its stand moved ${atLeast(base, unit)}`] : []),
    ...fieldWords(fields, unit),
  ];
  const with_ = fields.length === 0 ? ['with what carries it'] : [];
  return parts.length > 0 ? [...parts, ...with_].join(', ') : 'is not as it was';
}

/** Differences that are no place, in words; of the same name each once. */
function fieldWords(fields: readonly Difference[], unit: LengthUnit): readonly string[] {
  const told = fields.filter(({ path }) => !PLACES.has(path));
  const words = told.map((difference) => differenceWords(difference, unit));
  return [...new Set(words)];
}

/** `stature 1750 mm → 1820 mm`. */
export function differenceWords({ path, before, after }: Difference, unit: LengthUnit): string {
  const [top = path] = path.split('.');
  if (top === 'hears') return 'what it must hear';
  const known = fieldNames[path];
  if (!known) return plainName(path);
  const [name, kind] = known;
  const show = (value: Difference['before']): string => {
    if (value === undefined || value === null) return kind === 'mm' ? 'free' : 'none';
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
  length < 1 ? `less than ${showLength(1, unit)}` : showLength(length, unit);

/** Everything that changed, a line each: `Snare mic: moved 32 mm, turned 4°`. The player first, then mics, then pieces. */
export function kitChangeLines(
  { player, mics, pieces }: KitChanges,
  { units }: Pick<Layout, 'units'>,
): readonly string[] {
  const line = (thing: ThingChange): string =>
    `${capitalised(thing.name)}: ${thingChangeWords(thing, units)}`;
  const of = listed(player.map((difference) => differenceWords(difference, units)));
  return [...(player.length > 0 ? [`Player: ${of}`] : []), ...mics.map(line), ...pieces.map(line)];
}
