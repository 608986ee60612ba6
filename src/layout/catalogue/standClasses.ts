import type { Kilograms, Mm } from '../../units/quantity.ts';
import type { StandClass } from '../mics/mount.ts';

/**
 * What a class of mic stand can do. Every value is common practice, from memory: measure the stand that is carried when a
 * few centimetres or the risk of tipping matter.
 */
export interface StandSpec {
  readonly standClass: StandClass;
  readonly name: string;
  readonly base: 'tripod' | 'round';
  /** Hub to the tip of a foot, or the radius of the disc. */
  readonly footRadius: Mm;
  /** Round the mast at deck level: nothing passes through it. */
  readonly hubRadius: Mm;
  /** Height at which a tripod's legs meet the mast; the thickness of a disc. */
  readonly legHeight: Mm;
  /** Height of the clutch at the top of the mast. */
  readonly mastMin: Mm;
  readonly mastMax: Mm;
  readonly mastRadius: Mm;
  /** Clutch to the mic's clip along the boom: it slides through its clutch. 0 for a stand without a boom. */
  readonly boomMin: Mm;
  readonly boomMax: Mm;
  readonly boomRadius: Mm;
  /** Base and mast together. */
  readonly baseMass: Kilograms;
  readonly boomMass: Kilograms;
  /** At the boom's other end. */
  readonly counterweightMass: Kilograms;
}

const specs: Readonly<Record<StandClass, StandSpec>> = {
  tripodLow: {
    standClass: 'tripodLow',
    name: 'Low tripod boom',
    base: 'tripod',
    footRadius: 240,
    hubRadius: 30,
    legHeight: 110,
    mastMin: 400,
    mastMax: 650,
    mastRadius: 11,
    boomMin: 150,
    boomMax: 500,
    boomRadius: 8,
    baseMass: 1.6,
    boomMass: 0.4,
    counterweightMass: 0,
  },
  tripodMedium: {
    standClass: 'tripodMedium',
    name: 'Medium tripod boom',
    base: 'tripod',
    footRadius: 290,
    hubRadius: 30,
    legHeight: 150,
    mastMin: 600,
    mastMax: 1050,
    mastRadius: 12,
    boomMin: 150,
    boomMax: 700,
    boomRadius: 8,
    baseMass: 2.1,
    boomMass: 0.6,
    counterweightMass: 0.3,
  },
  tripodTall: {
    standClass: 'tripodTall',
    name: 'Tall tripod boom',
    base: 'tripod',
    footRadius: 330,
    hubRadius: 30,
    legHeight: 170,
    mastMin: 900,
    mastMax: 1600,
    mastRadius: 12,
    boomMin: 150,
    boomMax: 850,
    boomRadius: 9,
    baseMass: 2.6,
    boomMass: 0.8,
    counterweightMass: 0.5,
  },
  roundStraight: {
    standClass: 'roundStraight',
    name: 'Round base, straight',
    base: 'round',
    footRadius: 140,
    hubRadius: 140,
    legHeight: 25,
    mastMin: 900,
    mastMax: 1600,
    mastRadius: 12,
    boomMin: 0,
    boomMax: 0,
    boomRadius: 0,
    baseMass: 5,
    boomMass: 0,
    counterweightMass: 0,
  },
  roundBoom: {
    standClass: 'roundBoom',
    name: 'Round base with boom',
    base: 'round',
    footRadius: 165,
    hubRadius: 165,
    legHeight: 25,
    mastMin: 500,
    mastMax: 1300,
    mastRadius: 12,
    boomMin: 150,
    boomMax: 700,
    boomRadius: 8,
    baseMass: 8,
    boomMass: 0.6,
    counterweightMass: 0.3,
  },
};

/** What a class of stand can do. */
export const standSpec = (standClass: StandClass): StandSpec => specs[standClass];

/** Every class, the smallest first: the order in which they are tried and offered. */
export const STAND_CLASSES: readonly StandSpec[] = [
  specs.tripodLow,
  specs.tripodMedium,
  specs.tripodTall,
  specs.roundStraight,
  specs.roundBoom,
];
