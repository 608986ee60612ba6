import fc from 'fast-check';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { MIC_CLASSES } from '../../src/layout/catalogue/micClasses.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { Mount } from '../../src/layout/mics/mount.ts';

/** The starting kits as layouts. */
export const kits: readonly Layout[] = STARTING_KITS.map((kit) => kit.make('layout'));

export function kit(key: string): Layout {
  const found = STARTING_KITS.find((entry) => entry.key === key);
  if (!found) throw new RangeError(`No starting kit ${key}`);
  return found.make('layout');
}

export const fivePiece = kit('five-piece-two-racks');

export const micOn = (mount: Mount, micClass = 'pencil-condenser'): Mic => ({
  id: 'mic',
  name: 'Mic',
  micClass,
  hears: [],
  mount,
  input: null,
});

const whole = (min: number, max: number) => fc.integer({ min, max });
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const degrees = whole(0, 359);

export const anyClass = fc.constantFrom(...MIC_CLASSES.map(({ id }) => id));

export const anyClip = (drum: string): fc.Arbitrary<Extract<Mount, { kind: 'clip' }>> =>
  fc.record({
    kind: fc.constant('clip' as const),
    drum: fc.constant(drum),
    material: fc.constant('rubber' as const),
    angle: degrees,
    reach: mm(-60, 150),
    height: mm(5, 200),
    pitch: whole(-10, 90),
  });

export const anyStand: fc.Arbitrary<Extract<Mount, { kind: 'stand' }>> = fc.record({
  kind: fc.constant('stand' as const),
  stand: fc.constantFrom(
    'tripodLow' as const,
    'tripodMedium' as const,
    'tripodTall' as const,
    'roundStraight' as const,
    'roundBoom' as const,
  ),
  base: fc.record({ x: mm(-1500, 1500), y: mm(-1500, 1500) }),
  turn: degrees,
  mast: fc.option(mm(300, 1700)),
  tip: fc.record({ x: mm(-1500, 1500), y: mm(-1500, 1500), z: mm(50, 2000) }),
  azimuth: degrees,
  pitch: whole(-90, 90),
});
