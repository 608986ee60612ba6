import { fromInches } from '../../../units/inch.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import type { Piece } from '../../pieces/piece.ts';
import {
  heldBy,
  onStand,
  usualChina,
  usualCrash,
  usualFloorTom,
  usualHiHat,
  usualHiHatPedal,
  usualKick,
  usualPedal,
  usualRackTom,
  usualRide,
  usualSnare,
  usualSplash,
  usualThrone,
} from '../defaults/usualPieces.ts';
import { largeRiser, mic, onMicStand, rimClip, startingKit } from './startingKit.ts';

const kick = usualKick('kick');
const snare = usualSnare('snare');
const sideSnare = {
  ...usualSnare('side-snare'),
  name: 'Side snare',
  x: -650,
  y: 330,
  z: 690,
  tiltToward: 333,
  diameter: fromInches(12),
  depth: fromInches(5),
  support: onStand(200, 180),
};
const rack1 = {
  ...usualRackTom('rack-1'),
  name: 'Rack tom 1',
  x: -175,
  y: 765,
  z: 850,
  tiltToward: 283,
  diameter: fromInches(8),
  depth: fromInches(7),
  support: heldBy('crash-1'),
};
const rack2 = {
  ...usualRackTom('rack-2'),
  name: 'Rack tom 2',
  x: 75,
  y: 805,
  diameter: fromInches(10),
  depth: fromInches(8),
  support: heldBy(kick.id),
};
const rack3 = {
  ...usualRackTom('rack-3'),
  name: 'Rack tom 3',
  x: 380,
  y: 790,
  z: 840,
  tiltToward: 250,
  support: heldBy(kick.id),
};
const floor1 = {
  ...usualFloorTom('floor-1'),
  name: 'Floor tom 1',
  x: 560,
  y: 430,
  diameter: fromInches(14),
  depth: fromInches(14),
  support: { kind: 'legs' as const, overhang: 45, turn: 30 },
};
const floor2 = {
  ...usualFloorTom('floor-2'),
  name: 'Floor tom 2',
  x: 800,
  y: 100,
  z: 640,
  tiltToward: 187,
};
const hiHat = usualHiHat('hi-hat');
const crash1 = {
  ...usualCrash('crash-1'),
  name: 'Crash 1',
  x: -390,
  y: 960,
  z: 1170,
  diameter: fromInches(18),
  support: onStand(300, 30, -200, 240),
};
const crash2 = {
  ...usualCrash('crash-2'),
  name: 'Crash 2',
  x: -20,
  y: 1080,
  z: 1230,
  tiltToward: 271,
  support: onStand(300, 90, -310, 400),
};
const crash3 = {
  ...usualCrash('crash-3'),
  name: 'Crash 3',
  x: 560,
  y: 980,
  z: 1200,
  tiltToward: 240,
  diameter: fromInches(18),
  support: onStand(300, 100, 280, 280),
};
const splash = {
  ...usualSplash('splash'),
  x: 215,
  y: 1000,
  z: 1120,
  support: heldBy(crash2.id),
};
const ride = {
  ...usualRide('ride'),
  x: 740,
  y: 760,
  z: 980,
  support: onStand(320, 20, 200, 100),
};
const china = {
  ...usualChina('china'),
  x: 1050,
  y: 520,
  z: 1180,
  hands: 'right' as const,
  support: onStand(300, 0, 200, 60),
};

const pieces: Piece[] = [
  usualThrone('throne'),
  kick,
  usualPedal('pedal-kick'),
  snare,
  sideSnare,
  rack1,
  rack2,
  rack3,
  floor1,
  floor2,
  hiHat,
  usualHiHatPedal('pedal-hi-hat'),
  crash1,
  crash2,
  crash3,
  splash,
  ride,
  china,
];

const closeMics = [
  mic(
    'kick-dynamic',
    'Kick in',
    [kick],
    onMicStand('tripodLow', [60, 1600, 270], [50, 1214, 205], [270, 0]),
  ),
  mic('boundary-plate', 'Kick plate', [kick], { kind: 'plateInKick', kick: kick.id, depth: 220 }),
  mic('compact-dynamic', 'Snare', [snare], rimClip(snare.id, 130)),
  mic('mini-clip', 'Snare condenser', [snare], rimClip(snare.id, 75)),
  mic('compact-dynamic', 'Side snare', [sideSnare], rimClip(sideSnare.id, 160)),
  mic(
    'pencil-condenser',
    'Hi-hat',
    [hiHat],
    onMicStand('tripodMedium', [-930, 700, 30], [-540, 690, 985], [312, -65]),
  ),
  mic('compact-dynamic', 'Rack 1', [rack1], rimClip(rack1.id, 100)),
  mic('compact-dynamic', 'Rack 2', [rack2], rimClip(rack2.id, 90)),
  mic('compact-dynamic', 'Rack 3', [rack3], rimClip(rack3.id, 75)),
  mic('compact-dynamic', 'Floor tom 1', [floor1], rimClip(floor1.id, 60)),
  mic('compact-dynamic', 'Floor tom 2', [floor2], rimClip(floor2.id, 20)),
  mic(
    'pencil-condenser',
    'Ride',
    [ride],
    onMicStand('tripodMedium', [1020, 1560, 30], [890, 890, 1190], [220, -60]),
  ),
  mic(
    'pencil-condenser',
    'China',
    [china],
    onMicStand('tripodTall', [1600, 850, 60], [1150, 640, 1400], [230, -70]),
  ),
];

const overheads = [
  mic(
    'pencil-condenser',
    'Overhead, hi-hat side',
    [crash1, hiHat, snare],
    onMicStand('tripodTall', [-1050, 1050, 90], [-380, 850, 1850], [270, -90]),
  ),
  mic(
    'pencil-condenser',
    'Overhead, floor tom side',
    [crash3, ride, china],
    onMicStand('tripodTall', [1280, 1180, 90], [640, 900, 1850], [270, -90]),
  ),
  mic(
    'side-condenser',
    'Overhead, centre',
    [crash2, splash, snare],
    onMicStand('tripodTall', [430, 1690, 30], [150, 1080, 1850], [270, -90]),
  ),
];

/** Eight drums with a side snare and three rack toms; hi-hat, three crashes, splash, ride and china; sixteen mics. */
export const largeKit = (id: Id): Layout =>
  startingKit({
    id,
    name: 'Large kit',
    deck: largeRiser,
    pieces,
    mics: [...closeMics, ...overheads],
    box: { x: -1740, y: 900, turn: 0, inputs: 16, tail: 20_000 },
  });
