import { fromInches } from '../../../units/inch.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import type { Piece } from '../../pieces/piece.ts';
import {
  heldBy,
  kickHeight,
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

const kick = {
  ...usualKick('kick'),
  y: 1013,
  z: kickHeight(fromInches(18)),
  diameter: fromInches(18),
  depth: fromInches(14),
  port: null,
};
const snare = { ...usualSnare('snare'), z: 650, depth: fromInches(5) };
const rack = {
  ...usualRackTom('rack'),
  y: 790,
  z: 760,
  depth: fromInches(8),
  support: heldBy(kick.id),
};
const floorTom = {
  ...usualFloorTom('floor'),
  x: 480,
  y: 410,
  z: 630,
  diameter: fromInches(14),
  depth: fromInches(14),
};
const hiHat = { ...usualHiHat('hi-hat'), z: 840 };
const crashRide = {
  ...usualCrash('crash'),
  name: 'Crash-ride',
  x: -330,
  y: 900,
  z: 1050,
  diameter: fromInches(18),
};
const ride = { ...usualRide('ride'), x: 610, y: 710, z: 910 };

const pieces: Piece[] = [
  usualThrone('throne'),
  kick,
  usualPedal('pedal-kick'),
  snare,
  rack,
  floorTom,
  hiHat,
  usualHiHatPedal('pedal-hi-hat'),
  crashRide,
  ride,
];

const mics = [
  mic(
    'kick-dynamic',
    'Kick out',
    [kick],
    onMicStand('tripodLow', [140, 1660, 90], [110, 1250, 260], [270, 0]),
  ),
  mic(
    'short-dynamic',
    'Snare',
    [snare],
    onMicStand('tripodLow', [-270, 890, 85], [-141, 564, 690], [300, -35]),
  ),
  mic('compact-dynamic', 'Rack tom', [rack], rimClip(rack.id, 90)),
  mic('compact-dynamic', 'Floor tom', [floorTom], rimClip(floorTom.id, 60)),
  mic(
    'side-condenser',
    'Overhead, hi-hat side',
    [crashRide, hiHat, snare],
    onMicStand('tripodTall', [-850, 100, 90], [-350, 650, 1750], [270, -90]),
  ),
  mic(
    'side-condenser',
    'Overhead, floor tom side',
    [ride, floorTom, snare],
    onMicStand('tripodTall', [900, 150, 90], [420, 620, 1750], [270, -90]),
  ),
];

/** Four drums with a small kick without a port; hi-hat, crash-ride and ride. */
export const fourPieceJazz = (id: Id): Layout =>
  startingKit({
    id,
    name: 'Four-piece jazz',
    deck: squareRiser,
    pieces,
    mics,
    box: { x: -1130, y: 500, turn: 0, inputs: 8, tail: 15_000 },
  });
