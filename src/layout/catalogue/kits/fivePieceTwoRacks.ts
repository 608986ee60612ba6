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
import { mic, onMicStand, rimClip, squareRiser, startingKit } from './startingKit.ts';

const kick = usualKick('kick');
const snare = usualSnare('snare');
const rack1 = {
  ...usualRackTom('rack-1'),
  name: 'Rack tom 1',
  x: -10,
  y: 795,
  diameter: fromInches(10),
  depth: fromInches(8),
  support: heldBy(kick.id),
};
const rack2 = {
  ...usualRackTom('rack-2'),
  name: 'Rack tom 2',
  x: 310,
  y: 800,
  z: 840,
  tiltToward: 258,
  support: heldBy(kick.id),
};
const floorTom = usualFloorTom('floor');
const hiHat = usualHiHat('hi-hat');
const crash1 = { ...usualCrash('crash-1'), name: 'Crash 1' };
const crash2 = {
  ...usualCrash('crash-2'),
  name: 'Crash 2',
  x: 560,
  y: 1000,
  z: 1200,
  tiltToward: 241,
  diameter: fromInches(18),
  support: onStand(300, 90, 200, 180),
};
const ride = usualRide('ride');

const pieces: Piece[] = [
  usualThrone('throne'),
  kick,
  usualPedal('pedal-kick'),
  snare,
  rack1,
  rack2,
  floorTom,
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
    onMicStand('tripodLow', [100, 1640, 90], [50, 1214, 205], [270, 0]),
  ),
  mic('boundary-plate', 'Kick plate', [kick], { kind: 'plateInKick', kick: kick.id, depth: 220 }),
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
  mic('compact-dynamic', 'Rack 1', [rack1], rimClip(rack1.id, 95)),
  mic('compact-dynamic', 'Rack 2', [rack2], rimClip(rack2.id, 80)),
  mic('compact-dynamic', 'Floor tom', [floorTom], rimClip(floorTom.id, 60)),
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
    onMicStand('tripodTall', [900, 150, 90], [420, 650, 1800], [270, -90]),
  ),
];

/** Five drums, two of them rack toms on the kick; hi-hat, two crashes and a ride. */
export const fivePieceTwoRacks = (id: Id): Layout =>
  startingKit({
    id,
    name: 'Five-piece, two rack toms',
    deck: squareRiser,
    pieces,
    mics,
    box: { x: -1130, y: 500, turn: 0, inputs: 12, tail: 15_000 },
  });
