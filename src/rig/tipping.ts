import { listed } from '../geometry/listed.ts';
import { leftOf } from '../geometry/orientation.ts';
import { gap } from '../geometry/plan.ts';
import type { Vec2, Vec3 } from '../geometry/vector.ts';
import { type StandSpec, standSpec } from '../layout/catalogue/standClasses.ts';
import type { Kilograms, Mm } from '../units/quantity.ts';
import { BOOM_TAIL } from './mics/standMic.ts';
import type { Footprint, PlacedMic, PlacedStand } from './placed.ts';

/** From this safety factor a stand is firm; below it, it wants a counterweight or a sandbag (design rule, common practice, no source). */
export const FIRM = 1.5;

/** How firmly a stand stands: moments about the edge it would tip over first, in newton metres, and their ratio. */
export interface Tipping {
  /** Righting over tipping moment; infinite when the load's centre is over the base. */
  readonly factor: number;
  readonly righting: number;
  readonly tipping: number;
}

/** Standard acceleration of free fall, m/s2 (exact by definition, CGPM 1901). */
const GRAVITY = 9.80665;
const MM_PER_METRE = 1000;

/** A mass at a place on the plan. */
interface Load {
  readonly at: Vec2;
  readonly mass: Kilograms;
}

/**
 * T1 The load is the mic at its hold point, the boom at its middle (from the end of its tail to the hold point) and the
 *    counterweight at the end of the tail. Base and mast weigh on the hub. Masses are those of the classes.
 * T2 The base is the polygon of a tripod's feet, or a disc.
 * T3 About an edge of the base, the load tips with its mass times how far its centre lies beyond the edge, and base and mast
 *    hold with theirs times how far the hub lies inside. The factor is the smallest over the edges beyond which the load's
 *    centre lies; for a disc the edge is its tangent in the load's direction. Method: equilibrium of moments about the edge, on which a
 *    body stands when it is about to tip (Wickert and Lewis, An Introduction to Mechanical Engineering, section 4.5).
 * Undefined for a mic without a stand. The cable's weight and pull are not counted.
 */
export function tippingOf({ stand, micClass }: PlacedMic): Tipping | undefined {
  if (!stand) return undefined;
  const spec = standSpec(stand.standClass);
  const load = centreOf(loadsOn(spec, stand, micClass.mass));
  const levers = leversOf(stand.footprint, load.at).filter(({ beyond }) => beyond > 0);
  const tippings = listed(levers, ({ beyond, inside }): Tipping => {
    const tipping = (load.mass * GRAVITY * beyond) / MM_PER_METRE;
    const righting = (spec.baseMass * GRAVITY * inside) / MM_PER_METRE;
    return { factor: righting / tipping, righting, tipping };
  });
  const firm: Tipping = { factor: Number.POSITIVE_INFINITY, righting: 0, tipping: 0 };
  return tippings.reduce((worst, next) => (next.factor < worst.factor ? next : worst), firm);
}

function loadsOn(
  spec: StandSpec,
  { clutch, hold, boomLength }: PlacedStand,
  mic: Kilograms,
): Load[] {
  if (boomLength === 0) return [{ at: hold, mass: mic }];
  const onBoom = (fromClutch: Mm): Vec2 => pointOn(clutch, hold, fromClutch / boomLength);
  return [
    { at: hold, mass: mic },
    { at: onBoom((boomLength - BOOM_TAIL) / 2), mass: spec.boomMass },
    { at: onBoom(-BOOM_TAIL), mass: spec.counterweightMass },
  ];
}

const pointOn = (from: Vec3, to: Vec3, share: number): Vec2 => ({
  x: from.x + (to.x - from.x) * share,
  y: from.y + (to.y - from.y) * share,
});

function centreOf(loads: readonly Load[]): Load {
  const mass = loads.reduce((sum, load) => sum + load.mass, 0);
  const x = loads.reduce((sum, load) => sum + load.mass * load.at.x, 0) / mass;
  const y = loads.reduce((sum, load) => sum + load.mass * load.at.y, 0) / mass;
  return { at: { x, y }, mass };
}

/** About one edge: how far the load's centre lies beyond it and how far the hub lies inside, mm. */
interface Levers {
  readonly beyond: Mm;
  readonly inside: Mm;
}

function leversOf({ hub, hubRadius, feet }: Footprint, load: Vec2): Levers[] {
  if (feet.length === 0) return [{ beyond: gap(hub, load) - hubRadius, inside: hubRadius }];
  return listed(feet, (foot, i) => {
    const next = feet[(i + 1) % feet.length] ?? foot;
    const edge = gap(foot, next);
    const hubSide = leftOf(foot, next, hub) / edge;
    const loadSide = leftOf(foot, next, load) / edge;
    const beyond = hubSide > 0 ? -loadSide : loadSide;
    return { beyond, inside: Math.abs(hubSide) };
  });
}
