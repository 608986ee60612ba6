import { standSpec } from '../../layout/catalogue/standClasses.ts';
import type { Id } from '../../layout/fields.ts';
import type { Mount } from '../../layout/mics/mount.ts';
import type { Insert, Split } from '../../layout/patch.ts';
import { type BandColour, colourBands } from '../../units/colourCode.ts';
import { MM_PER_FOOT } from '../../units/inch.ts';
import type { LengthUnit } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import type { InputRow } from '../inputList.ts';
import type { HeadPlace, PatchSource } from '../pickup.ts';

/** Words of tables that leave the app. */

const SOURCES: Readonly<Record<PatchSource, string>> = {
  kick: 'Kick',
  snare: 'Snare',
  hiHat: 'Hi-hat',
  rackTom: 'Rack tom',
  floorTom: 'Floor tom',
  percussion: 'Percussion',
  ride: 'Ride',
  cymbal: 'Cymbal',
  overhead: 'Overhead',
  none: '',
};

const PLACES: Readonly<Record<HeadPlace, string>> = {
  top: 'top',
  bottom: 'bottom',
  inside: 'inside',
  front: 'front',
  batter: 'beater side',
};

export const INSERTS: Readonly<Record<Insert, string>> = {
  none: '',
  gate: 'gate',
  compressor: 'compressor',
  gateAndCompressor: 'gate, compressor',
};

/** Names of pieces by id. */
export type PieceNames = ReadonlyMap<Id, string>;

/** What a row is for: `Snare, bottom`, `Overhead: Crash 1, Hi-hat`. */
export function sourceWords({ source, place, hears }: InputRow, names: PieceNames): string {
  const heard = hears.flatMap((id) => names.get(id) ?? []);
  if (source === 'overhead') return [SOURCES[source], heard.join(', ')].join(': ');
  const own = heard[0] ?? SOURCES[source];
  return place ? `${own}, ${PLACES[place]}` : own;
}

export function mountWords(mount: Mount): string {
  switch (mount.kind) {
    case 'clip':
      return `Rim clip, ${mount.material}`;
    case 'stand':
      return 'Stand';
    case 'plateInKick':
      return 'Plate in the kick';
    case 'plateOnDeck':
      return 'Plate on the deck';
  }
}

export const standWords = (mount: Mount): string =>
  mount.kind === 'stand' ? standSpec(mount.stand).name : '';

/** `Splitter: direct to channel, isolated to Monitors (lifted)`. */
export function splitWords({ kind, legs }: Split): string {
  const ends = legs.map((leg) => {
    const to = leg.to === 'channel' ? 'channel' : leg.name;
    const marks = [
      ...(leg.to === 'other' && leg.phantom ? ['48 V'] : []),
      ...(leg.lifted ? ['lifted'] : []),
    ];
    return `${leg.connection} to ${to}${marks.length > 0 ? ` (${marks.join(', ')})` : ''}`;
  });
  return `${kind === 'y' ? 'Plain Y' : 'Splitter'}: ${ends.join(', ')}`;
}

/** The colours of a number's digits; the number itself stands in a cell of its own. */
export const colourWords = (number: number | null): string =>
  number === null
    ? ''
    : colourBands(number)
        .map(({ colour }): BandColour => colour)
        .join(' ');

/** Metres or feet, to a hundredth. */
export const longNumber = (length: Mm, unit: LengthUnit): number =>
  Math.round((length / (unit === 'mm' ? 1000 : MM_PER_FOOT)) * 100) / 100;

export const longUnit = (unit: LengthUnit): 'm' | 'ft' => (unit === 'mm' ? 'm' : 'ft');
