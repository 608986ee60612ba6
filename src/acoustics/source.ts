import { along, scale, type Vec3 } from '../geometry/vector.ts';
import type { Kick } from '../layout/pieces/kick.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import { kickFrame, portCentre } from '../rig/pieces/kickFrame.ts';
import type { PlacedPiece } from '../rig/placed.ts';
import { surfaceOf } from '../rig/surface.ts';
import type { Decibels, Mm } from '../units/quantity.ts';
import type { AcousticChoices, Sounding } from './choices.ts';
import { fundamentalOf } from './fundamental.ts';
import type { Hertz } from './quantities.ts';
import { type RadiatingDisc, radiatingDisc } from './radiation.ts';

/** Where sound leaves a piece: the struck head, the other head, the port of a kick's front head, a cymbal, a small struck spot. */
export type SurfaceName = 'batter' | 'resonant' | 'port' | 'cymbal' | 'spot';

export interface RadiatingSurface extends RadiatingDisc {
  readonly name: SurfaceName;
  /** Its part of the piece's energy; all of a piece's add up to 1. */
  readonly share: number;
}

/** A piece as a source of sound. */
export interface Source {
  readonly piece: Sounding;
  /** At 1 m, all surfaces together. */
  readonly level: Decibels;
  readonly surfaces: readonly RadiatingSurface[];
  /** What is struck: centre, unit normal on the side of the stick or beater, radius. Its centre is where time begins. */
  readonly struck: RadiatingSurface;
  /** From the struck head to the head at the other end; 0 for what has one surface. */
  readonly depth: Mm;
  /** H41 What sound of other pieces loses on its way into the shell; 0 for what has none. */
  readonly shellLoss: Decibels;
  readonly fundamental: Hertz | undefined;
}

/**
 * H18 A piece's energy leaves by its surfaces in these parts. Estimates, no source: a snare's and a tom's lower head give a
 *     quarter, a kick's front half; a port takes a quarter of the front's. A hi-hat is one cymbal at its edge plane.
 */
const RESONANT_SHARE = 0.25;
const FRONT_SHARE = 0.5;
const PORT_SHARE = 0.25;

/** A placed piece as a source; undefined for a pedal or throne. */
export function sourceOf({ piece }: PlacedPiece, choices: AcousticChoices): Source | undefined {
  if (piece.kind === 'pedal' || piece.kind === 'throne') return undefined;
  const surfaces = surfacesOf(piece);
  const [struck] = surfaces;
  const hasShell = isDrum(piece) || piece.kind === 'kick';
  return {
    piece,
    level: choices.pieceLevels[piece.id] ?? choices.levels[piece.kind],
    surfaces,
    struck,
    depth: hasShell ? piece.depth : 0,
    shellLoss: hasShell ? choices.shellLoss : 0,
    fundamental: fundamentalOf(piece, choices),
  };
}

type Surfaces = readonly [struck: RadiatingSurface, ...others: RadiatingSurface[]];

function surfacesOf(piece: Sounding): Surfaces {
  if (piece.kind === 'kick') return kickSurfaces(piece);
  const { centre, normal, radius } = surfaceOf(piece);
  if (!isDrum(piece)) {
    const name = piece.kind === 'percussion' ? 'spot' : 'cymbal';
    return [{ name, share: 1, ...radiatingDisc(centre, normal, radius) }];
  }
  const under = along(centre, normal, -piece.depth);
  return [
    { name: 'batter', share: 1 - RESONANT_SHARE, ...radiatingDisc(centre, normal, radius) },
    {
      name: 'resonant',
      share: RESONANT_SHARE,
      ...radiatingDisc(under, scale(normal, -1), radius),
    },
  ];
}

function kickSurfaces(kick: Kick): Surfaces {
  const frame = kickFrame(kick);
  const radius = kick.diameter / 2;
  const facing = (centre: Vec3, size: Mm) => radiatingDisc(centre, frame.front, size);
  const batter: RadiatingSurface = {
    name: 'batter',
    share: 1 - FRONT_SHARE,
    ...radiatingDisc(frame.backHead, scale(frame.front, -1), radius),
  };
  const front = { name: 'resonant' as const, ...facing(frame.frontHead, radius) };
  if (!kick.port) return [batter, { ...front, share: FRONT_SHARE }];
  return [
    batter,
    { ...front, share: FRONT_SHARE * (1 - PORT_SHARE) },
    {
      name: 'port',
      share: FRONT_SHARE * PORT_SHARE,
      ...facing(portCentre(kick, frame), kick.port.diameter / 2),
    },
  ];
}
