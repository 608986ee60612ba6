import type { Vec2 } from '../../geometry/vector.ts';
import type { Report } from '../../report/report.ts';
import type { Footprint, MicPart, PlacedMic, PlacedPiece } from '../../rig/placed.ts';
import type { Mark, Point } from '../mark.ts';
import { looks } from './looks.ts';
import { capsuleMark, cylinderMark, type Turn, tubeMark } from './solids.ts';

/** Kit, stands and mics as they are seen, the farthest from who looks first. */
export function kitMarks({ rig }: Pick<Report, 'rig'>, turn: Turn): readonly Mark[] {
  const things = [
    ...rig.pieces.map((placed) => ({ depth: pieceDepth(placed, turn), placed })),
    ...rig.mics.map((placed) => ({ depth: turn.point(placed.tip).z, placed })),
  ];
  return things
    .toSorted((a, b) => a.depth - b.depth)
    .flatMap(({ placed }) =>
      'piece' in placed ? pieceMarks(placed, turn) : micMarks(placed, turn),
    );
}

const isSeeThrough = ({ piece }: PlacedPiece): boolean =>
  ['crash', 'ride', 'splash', 'china', 'hiHat'].includes(piece.kind);

/** Cymbals are only outlines: they are drawn last, so that no drum hides them. */
function pieceDepth(placed: PlacedPiece, turn: Turn): number {
  const depths = placed.shells.map(({ centre }) => turn.point(centre).z);
  const nearest = Math.max(-1e6, ...depths);
  return isSeeThrough(placed) ? nearest + 1e5 : nearest;
}

function pieceMarks(placed: PlacedPiece, turn: Turn): readonly Mark[] {
  const { piece } = placed;
  const solid = piece.kind === 'throne' ? looks.seat : looks.shell;
  const shell = isSeeThrough(placed) ? looks.cymbal : solid;
  const hardware = { layer: 'FEET', look: looks.hardware } as const;
  return [
    ...placed.hardware.map((capsule) => capsuleMark(capsule, turn, hardware)),
    ...placed.shells.map((each) => cylinderMark(each, turn, { layer: 'KIT', look: shell })),
    ...placed.hoops.map((hoop) => tubeMark(hoop, turn, { layer: 'KIT', look: looks.hoop })),
  ];
}

const holds: readonly MicPart[] = ['boom', 'mast', 'base', 'clipArm'];

function micMarks({ solids }: PlacedMic, turn: Turn): readonly Mark[] {
  const upper = solids.filter(({ part }) => part !== 'base');
  const base = solids.filter(({ part }) => part === 'base');
  return [...base, ...upper].map(({ part, capsule }) =>
    holds.includes(part)
      ? capsuleMark(capsule, turn, { layer: 'STANDS', look: looks.stand })
      : capsuleMark(capsule, turn, { layer: 'MICS', look: looks.mic }),
  );
}

/** The ground that stands cover: each foot's line from its hub, or the disc. `onDeck` takes a kit point to the drawing. */
export function footMarks(
  { hub, hubRadius, feet }: Footprint,
  onDeck: (p: Vec2) => Point,
): readonly Mark[] {
  const centre = onDeck(hub);
  if (feet.length === 0) {
    return [{ kind: 'circle', layer: 'FEET', centre, radius: hubRadius, look: looks.feet }];
  }
  return feet.map((foot) => ({
    kind: 'line',
    layer: 'FEET',
    points: [centre, onDeck(foot)],
    closed: false,
    look: looks.feet,
  }));
}
