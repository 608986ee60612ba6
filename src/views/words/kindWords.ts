import type { MountChoice } from '../../layout/catalogue/micClasses.ts';
import { standSpec } from '../../layout/catalogue/standClasses.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import type { Mount, StandClass } from '../../layout/mics/mount.ts';
import type { PieceKind } from '../../layout/pieces/piece.ts';

const kinds: Readonly<Record<PieceKind, string>> = {
  kick: 'Kick drum',
  snare: 'Snare',
  rackTom: 'Rack tom',
  floorTom: 'Floor tom',
  hiHat: 'Hi-hat',
  crash: 'Crash',
  ride: 'Ride',
  splash: 'Splash',
  china: 'China',
  percussion: 'Cowbell, block',
  pedal: 'Pedal',
  throne: 'Throne',
};

/** A kind of piece as it is offered. */
export const kindWords = (kind: PieceKind): string => kinds[kind];

/** How a mic is held, in a few words: `Rubber rim clip`, `Medium tripod boom`. */
export function mountWords(mount: Mount): string {
  switch (mount.kind) {
    case 'clip':
      return mount.material === 'metal' ? 'Metal rim clip' : 'Rubber rim clip';
    case 'stand':
      return standWords(mount.stand);
    case 'plateInKick':
      return 'Lying in the kick';
    case 'plateOnDeck':
      return 'Lying on the deck';
  }
}

/** A way to hold a mic as it is offered. */
export function choiceWords(choice: MountChoice): string {
  switch (choice) {
    case 'clip':
      return 'Rim clip';
    case 'plateInKick':
      return 'Lying in the kick';
    case 'plateOnDeck':
      return 'Lying on the deck';
    default:
      return standWords(choice);
  }
}

/** The name of a class of stand. */
export const standWords = (stand: StandClass): string => standSpec(stand).name;

const types: Readonly<Record<MicClass['type'], string>> = {
  dynamic: 'Dynamic',
  condenser: 'Condenser',
  ribbon: 'Ribbon',
  boundary: 'Boundary',
};

/** How a mic works. */
export const micTypeWords = (type: MicClass['type']): string => types[type];

/** The first-order pattern by its usual name, for A in A + B cos: `Cardioid`. */
export function patternWords(patternA: number): string {
  if (patternA >= 0.95) return 'Omni';
  if (patternA >= 0.6) return 'Subcardioid';
  if (patternA >= 0.45) return 'Cardioid';
  if (patternA >= 0.3) return 'Supercardioid';
  return patternA >= 0.1 ? 'Hypercardioid' : 'Figure-8';
}
