import type { Mm } from '../units/quantity.ts';
import { changeFrom, costOf, DEAREST } from './clearSpotCost.ts';
import { cheaper } from './clearSpotPolish.ts';
import { areNear, placesAround, ROUGH } from './clearSpotScout.ts';
import { isPossible, type SpotScene, widestMargin } from './clearSpotTrial.ts';

/** Places between two steps. */
const STEP = 64;
/** From how many places the room is made larger. */
const STARTS = 3;

/** A place where the mic may stand; it costs the less the more room it has. */
interface Roomy {
  readonly values: readonly number[];
  readonly cost: Mm;
}

/** The place about a mic with the most room that was seen. */
export interface RoomySpot {
  readonly values: readonly number[];
  /** With this margin, mm, or a smaller one it is a clear spot. */
  readonly margin: Mm;
}

/**
 * Rule N7: where no spot is clear, the widest margin with which there is one: what the roomiest places of the rough look all round have, made more in
 * the strides of rule N6, of those where the mic may stand and keeps its aim, less what a spot has over its margin. Room is what both what moves and the player at rest (Q1) leave. The margin that was asked for
 * changes nothing about it, and there may be a place with a little more. Undefined where the mic may stand nowhere. Step by step, so that it can be left.
 */
export function* roomiest(scene: SpotScene): Generator<void, RoomySpot | undefined> {
  const { family, now } = scene;
  const { freedoms } = family;
  const trial = new RoomTrial(scene);
  let starts: readonly Roomy[] = [];
  const places = placesAround(family, now, { strides: ROUGH, dearest: DEAREST });
  for (const [looked, { values }] of places.entries()) {
    if (looked % STEP === 0) yield;
    const found = trial.found(values, starts[STARTS - 1]?.cost ?? Number.POSITIVE_INFINITY);
    if (found) starts = withStart(starts, found, (p, q) => areNear(freedoms, p.values, q.values));
  }
  let best: Roomy | undefined;
  for (const start of starts) {
    yield;
    const found = cheaper(freedoms, trial, start);
    if (!best || found.cost < best.cost) best = found;
  }
  return best && { values: best.values, margin: widestMargin(-best.cost) };
}

class RoomTrial {
  private readonly scene: SpotScene;

  constructor(scene: SpotScene) {
    this.scene = scene;
  }

  found(values: readonly number[], limit: Mm): Roomy | undefined {
    const { family, now, clearanceOf, playerRoom, standsFirst } = this.scene;
    const spot = family.spotAt(values);
    if (!spot || !isPossible(family, values, spot)) return undefined;
    if (costOf(changeFrom(now, spot)) >= DEAREST) return undefined;
    const movingRoom = (): Mm | undefined => clearanceOf(spot.groups.flat(), -limit);
    const standingRoom = (): Mm | undefined => playerRoom(spot);
    const [first, second] = standsFirst ? [standingRoom, movingRoom] : [movingRoom, standingRoom];
    const some = first();
    if (some === undefined || -some >= limit) return undefined;
    const rest = second();
    if (rest === undefined) return undefined;
    const cost = -Math.min(some, rest);
    return cost < limit ? { values, cost } : undefined;
  }
}

/** The best starts with one more, of those near to each other the best one only. */
function withStart(
  starts: readonly Roomy[],
  found: Roomy,
  isNear: (p: Roomy, q: Roomy) => boolean,
): readonly Roomy[] {
  if (starts.some((start) => start.cost <= found.cost && isNear(start, found))) return starts;
  return [...starts.filter((start) => !isNear(start, found)), found]
    .sort((p, q) => p.cost - q.cost)
    .slice(0, STARTS);
}
