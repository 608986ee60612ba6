import type { Capsule } from '../../geometry/capsule.ts';
import { remembered } from '../../geometry/remembered.ts';
import { type Vec2, vec } from '../../geometry/vector.ts';
import type { Figure } from '../../report/figure.ts';
import type { ClearanceRow, Report } from '../../report/report.ts';
import type { ArmPosition, Sweep } from '../../report/sweep.ts';
import type { Footprint, PlacedMic, PlacedPiece } from '../../rig/placed.ts';
import type { Standpoint } from '../../rig/standpoint.ts';
import type { Surface } from '../../rig/surface.ts';

/** Things in space as they stand in an elevation (rule E1). What stays the same comes out the same object. */
export interface Turner {
  readonly standpoint: Standpoint;
  capsule(capsule: Capsule): Capsule;
  surface(surface: Surface): Surface;
  piece(placed: PlacedPiece): PlacedPiece;
  mic(placed: PlacedMic): PlacedMic;
  arm(arm: ArmPosition): ArmPosition;
  sweep(sweep: Sweep): Sweep;
  figure(figure: Figure): Figure;
  /** The rig and the clearances turned. Runs lie on the deck and have no elevation. */
  report(report: Report): Report;
}

export function createTurner(standpoint: Standpoint): Turner {
  const { point, direction } = standpoint;
  const capsule = ({ a, b, radius }: Capsule): Capsule => ({ a: point(a), b: point(b), radius });
  const piece = remembered((placed: PlacedPiece) => turnedPiece(placed, standpoint));
  const mic = remembered((placed: PlacedMic) => turnedMic(placed, standpoint));
  const row = remembered(
    (one: ClearanceRow): ClearanceRow => ({
      ...one,
      nearest: one.nearest && {
        ...one.nearest,
        onMic: point(one.nearest.onMic),
        onMoving: point(one.nearest.onMoving),
      },
    }),
  );
  const arm = ({ at, elbow, grip, butt, tip }: ArmPosition): ArmPosition => ({
    at,
    elbow: point(elbow),
    grip: point(grip),
    butt: point(butt),
    tip: point(tip),
  });
  return {
    standpoint,
    capsule,
    piece,
    mic,
    arm,
    surface: ({ centre, normal, radius }) => ({
      centre: point(centre),
      normal: direction(normal),
      radius,
    }),
    sweep: remembered((sweep: Sweep) => ({ ...sweep, positions: sweep.positions.map(arm) })),
    figure: remembered((figure: Figure) => turnedFigure(figure, capsule)),
    report: remembered(
      (report: Report): Report => ({
        ...report,
        rig: { pieces: report.rig.pieces.map(piece), mics: report.rig.mics.map(mic) },
        clearances: report.clearances.map(row),
      }),
    ),
  };
}

function turnedPiece(placed: PlacedPiece, { point, direction }: Standpoint): PlacedPiece {
  return {
    piece: placed.piece,
    shells: placed.shells.map((shell) => ({
      ...shell,
      centre: point(shell.centre),
      axis: direction(shell.axis),
    })),
    hoops: placed.hoops.map((hoop) => ({
      ...hoop,
      centre: point(hoop.centre),
      axis: direction(hoop.axis),
    })),
    hardware: placed.hardware.map(({ a, b, radius }) => ({ a: point(a), b: point(b), radius })),
    footprints: [],
    outlines: [],
  };
}

function turnedMic(placed: PlacedMic, { point, direction }: Standpoint): PlacedMic {
  const onDeck = ({ x, y }: Vec2): Vec2 => {
    const turned = point(vec(x, y, 0));
    return { x: turned.x, y: turned.y };
  };
  const footprint = (foot: Footprint): Footprint => ({
    ...foot,
    hub: onDeck(foot.hub),
    feet: foot.feet.map(onDeck),
  });
  return {
    ...placed,
    tip: point(placed.tip),
    axis: direction(placed.axis),
    solids: placed.solids.map(({ part, capsule: { a, b, radius } }) => ({
      part,
      capsule: { a: point(a), b: point(b), radius },
    })),
    stand: placed.stand && {
      ...placed.stand,
      clutch: point(placed.stand.clutch),
      hold: point(placed.stand.hold),
      footprint: footprint(placed.stand.footprint),
    },
  };
}

function turnedFigure(figure: Figure, capsule: (capsule: Capsule) => Capsule): Figure {
  return {
    trunk: figure.trunk.map(capsule),
    shoulders: capsule(figure.shoulders),
    neck: capsule(figure.neck),
    head: figure.head.map(capsule),
    arms: figure.arms.map(([upper, fore]) => [capsule(upper), capsule(fore)] as const),
    legs: figure.legs.map((leg) => ({
      ...leg,
      thigh: capsule(leg.thigh),
      shin: capsule(leg.shin),
    })),
    feet: figure.feet.map(({ pedal, solids }) => ({ pedal, solids: solids.map(capsule) })),
    beaters: figure.beaters.map(({ pedal, swept, frame }) => ({
      pedal,
      swept: swept.map(capsule),
      frame: frame.map(capsule),
    })),
  };
}
