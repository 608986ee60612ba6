import type { Id } from '../fields.ts';
import type { MicClass } from '../mics/micClass.ts';
import type { Mount, StandClass } from '../mics/mount.ts';

/**
 * Generic classes of microphone. Sizes are typical of each class, within the envelopes of common practice, from memory: no
 * maker's model is meant, and a class of the user's own replaces them where the difference matters.
 *
 * Patterns are first order, A + B cos(angle), A + B = 1; `patternA` is A. Cardioid: A = 0.5. Supercardioid has three
 * conventions; this catalogue uses A = 0.375, B = 0.625 (null at 126.87 degrees, rear -12.04 dB). Hypercardioid: A = 0.25.
 * Figure-8: A = 0. A boundary plate hears the half space in front of its plate: it is given as an omni, A = 1.
 */
const CARDIOID = 0.5;
const SUPERCARDIOID = 0.375;
const OMNI = 1;
const FIGURE_8 = 0;

/** Ids of the built-in classes. Saved layouts name them, so they never change. */
export type BuiltInMicClassId =
  | 'compact-dynamic'
  | 'short-dynamic'
  | 'long-dynamic'
  | 'kick-dynamic'
  | 'boundary-plate'
  | 'pencil-condenser'
  | 'side-condenser'
  | 'ribbon'
  | 'mini-clip';

export type BuiltInMicClass = MicClass & { readonly id: BuiltInMicClassId };

/** How a class is usually held, the most usual first: `stand` classes by name, clips and plates by kind. */
export type MountChoice = Exclude<Mount['kind'], 'stand'> | StandClass;

const classes: Readonly<Record<BuiltInMicClassId, Omit<MicClass, 'id'>>> = {
  'compact-dynamic': {
    name: 'Compact dynamic',
    length: 80,
    diameter: 38,
    address: 'end',
    patternA: CARDIOID,
    type: 'dynamic',
    phantom: false,
    connector: 'rightAngle',
    mass: 0.15,
  },
  'short-dynamic': {
    name: 'Short instrument dynamic',
    length: 115,
    diameter: 36,
    address: 'end',
    patternA: CARDIOID,
    type: 'dynamic',
    phantom: false,
    connector: 'straight',
    mass: 0.24,
  },
  'long-dynamic': {
    name: 'Long instrument dynamic',
    length: 157,
    diameter: 32,
    address: 'end',
    patternA: CARDIOID,
    type: 'dynamic',
    phantom: false,
    connector: 'straight',
    mass: 0.29,
  },
  'kick-dynamic': {
    name: 'Large kick dynamic',
    length: 150,
    diameter: 80,
    address: 'end',
    patternA: CARDIOID,
    type: 'dynamic',
    phantom: false,
    connector: 'straight',
    mass: 0.55,
  },
  'boundary-plate': {
    name: 'Boundary plate',
    length: 130,
    diameter: 90,
    address: 'end',
    patternA: OMNI,
    type: 'boundary',
    phantom: true,
    connector: 'thinCable',
    mass: 0.5,
  },
  'pencil-condenser': {
    name: 'Pencil condenser',
    length: 130,
    diameter: 22,
    address: 'end',
    patternA: CARDIOID,
    type: 'condenser',
    phantom: true,
    connector: 'straight',
    mass: 0.12,
  },
  'side-condenser': {
    name: 'Side-address condenser',
    length: 180,
    diameter: 50,
    address: 'side',
    patternA: CARDIOID,
    type: 'condenser',
    phantom: true,
    connector: 'straight',
    mass: 0.4,
  },
  ribbon: {
    name: 'Figure-8 ribbon',
    length: 165,
    diameter: 45,
    address: 'side',
    patternA: FIGURE_8,
    type: 'ribbon',
    phantom: false,
    connector: 'straight',
    mass: 0.45,
  },
  'mini-clip': {
    name: 'Miniature clip-on condenser',
    length: 45,
    diameter: 20,
    address: 'end',
    patternA: SUPERCARDIOID,
    type: 'condenser',
    phantom: true,
    connector: 'thinCable',
    mass: 0.03,
  },
};

const ids: readonly BuiltInMicClassId[] = [
  'compact-dynamic',
  'short-dynamic',
  'long-dynamic',
  'kick-dynamic',
  'boundary-plate',
  'pencil-condenser',
  'side-condenser',
  'ribbon',
  'mini-clip',
];

/** The built-in classes, in the order in which they are offered. */
export const MIC_CLASSES: readonly BuiltInMicClass[] = ids.map((id) => ({ id, ...classes[id] }));

const byId: ReadonlyMap<Id, MicClass> = new Map(MIC_CLASSES.map((entry) => [entry.id, entry]));

/** Whether an id names a built-in class. */
export const isBuiltInMicClass = (id: Id): id is BuiltInMicClassId => byId.has(id);

/** The class an id names in a layout: the layout's own classes first, then the built-in ones. */
export function findMicClass(
  layout: { readonly ownClasses: readonly MicClass[] },
  id: Id,
): MicClass | undefined {
  return layout.ownClasses.find((own) => own.id === id) ?? byId.get(id);
}

const mounts: Readonly<Record<BuiltInMicClassId, readonly MountChoice[]>> = {
  'compact-dynamic': ['clip', 'tripodMedium', 'tripodLow', 'tripodTall', 'roundBoom'],
  'short-dynamic': ['tripodMedium', 'clip', 'tripodLow', 'tripodTall', 'roundBoom'],
  'long-dynamic': ['tripodMedium', 'tripodLow', 'tripodTall', 'roundBoom', 'clip'],
  'kick-dynamic': ['tripodLow', 'roundBoom', 'tripodMedium', 'tripodTall'],
  'boundary-plate': ['plateInKick', 'plateOnDeck'],
  'pencil-condenser': ['tripodTall', 'tripodMedium', 'tripodLow', 'roundBoom', 'roundStraight'],
  'side-condenser': ['tripodTall', 'roundBoom', 'roundStraight', 'tripodMedium', 'tripodLow'],
  ribbon: ['tripodTall', 'roundBoom', 'roundStraight', 'tripodMedium', 'tripodLow'],
  'mini-clip': ['clip', 'tripodLow', 'tripodMedium'],
};

/** How a class is usually held (common practice, from memory), the most usual first. A class of the user's own goes on any mount its type allows. */
export function usualMounts(micClass: MicClass): readonly MountChoice[] {
  if (isBuiltInMicClass(micClass.id)) return mounts[micClass.id];
  if (micClass.type === 'boundary') return mounts['boundary-plate'];
  return ['tripodMedium', 'tripodLow', 'tripodTall', 'roundStraight', 'roundBoom', 'clip'];
}
