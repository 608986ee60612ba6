import { fromInches } from '../../../units/inch.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import type { Piece } from '../../pieces/piece.ts';
import {
  heldBy,
  onStand,
  usualCrash,
  usualFloorTom,
  usualHiHat,
  usualHiHatPedal,
  usualKick,
  usualPedal,
  usualRackTom,
  usualRide,
  usualSnare,
  usualThrone,
} from '../defaults/usualPieces.ts';
import { mic, onMicStand, rimClip, startingKit, wideRiser } from './startingKit.ts';

const kick = { ...usualKick('kick'), y: 1035, depth: fromInches(16) };
const snare = usualSnare('snare');
const rack = { ...usualRackTom('rack'), z: 830, support: heldBy(kick.id) };
const floor1 = {
  ...usualFloorTom('floor-1'),
  name: 'Floor tom 1',
  x: 490,
  y: 430,
  diameter: fromInches(14),
  depth: fromInches(14),
};
const floor2 = {
  ...usualFloorTom('floor-2'),
  name: 'Floor tom 2',
  x: 780,
  y: 90,
  z: 640,
  tiltToward: 187,
};
const hiHat = usualHiHat('hi-hat');
const crash1 = { ...usualCrash('crash-1'), name: 'Crash 1' };
const crash2 = {
  ...usualCrash('crash-2'),
  name: 'Crash 2',
  x: 520,
  y: 1020,
  z: 1180,
  tiltToward: 243,
  diameter: fromInches(18),
  support: onStand(300, 60, 240, 230),
};
const ride = {
  ...usualRide('ride'),
  x: 620,
  y: 750,
  z: 940,
  support: onStand(320, 20, 160, 70),
};

const pieces: Piece[] = [
  usualThrone('throne'),
  kick,
  usualPedal('pedal-kick'),
  snare,
  rack,
  floor1,
  floor2,
  hiHat,
  usualHiHatPedal('pedal-hi-hat'),
  crash1,
  crash2,
  ride,
];

const mics = [
  mic(
    'kick-dynamic',
    'Kick in',
    [kick],
    onMicStand('tripodLow', [100, 1600, 90], [50, 1163, 205], [270, 0]),
  ),
  mic(
    'short-dynamic',
    'Snare',
    [snare],
    onMicStand('tripodLow', [-270, 890, 70], [-141, 564, 700], [300, -35]),
  ),
  mic(
    'pencil-condenser',
    'Hi-hat',
    [hiHat],
    onMicStand('tripodMedium', [-880, 620, 0], [-540, 690, 985], [312, -65]),
  ),
  mic('compact-dynamic', 'Rack tom', [rack], rimClip(rack.id, 90)),
  mic('compact-dynamic', 'Floor tom 1', [floor1], rimClip(floor1.id, 60)),
  mic('compact-dynamic', 'Floor tom 2', [floor2], rimClip(floor2.id, 20)),
  mic(
    'pencil-condenser',
    'Overhead, hi-hat side',
    [crash1, hiHat, snare],
    onMicStand('tripodTall', [-850, 100, 90], [-350, 650, 1800], [270, -90]),
  ),
  mic(
    'pencil-condenser',
    'Overhead, floor tom side',
    [crash2, ride, snare],
    onMicStand('tripodTall', [1150, 480, 0], [480, 650, 1800], [270, -90]),
  ),
];

/** Five drums, one of them a rack tom, with two floor toms; hi-hat, two crashes and a ride. */
export const fivePieceOneRack = (id: Id): Layout =>
  startingKit({
    id,
    name: 'Five-piece, one rack tom',
    deck: wideRiser,
    pieces,
    mics,
    box: { x: -1740, y: 900, turn: 0, inputs: 12, tail: 15_000 },
  });
