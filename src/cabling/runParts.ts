import { listed } from '../geometry/listed.ts';
import { wayLength } from '../geometry/plan.ts';
import type { Layout } from '../layout/layout.ts';
import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { INPUT_HEIGHT } from './box.ts';
import type { LaidWay } from './layWay.ts';
import type { Run, RunPart } from './run.ts';

/**
 * The run of one mic along a laid way.
 *
 * R1 Its parts in the order in which it is laid: the loop at the mic; down boom, mast, arm or drum; over deck and stage
 *    floor, as long as its route; over the deck's edge, where it goes over it, by the deck's height each time; up to the input;
 *    the loop at the box; and for dressing a share of everything but the loops.
 * R2 Its total is the sum of its parts in that order.
 */
export function runAlong(placed: PlacedMic, way: LaidWay, layout: Layout): Run {
  const { cabling, deck } = layout;
  const laid: RunPart[] = [
    ...listed(placed.descent, ({ along, length }) => ({ what: along, length })),
    { what: 'deck', length: wayLength(way.route) },
    ...(way.edges > 0 ? [{ what: 'edge', length: way.edges * deck.height } as const] : []),
    { what: 'box', length: INPUT_HEIGHT },
  ];
  const parts: RunPart[] = [
    { what: 'loopAtMic', length: cabling.loopAtMic },
    ...laid,
    { what: 'loopAtBox', length: cabling.loopAtBox },
    { what: 'dressing', length: (cabling.dressing / 100) * sum(laid) },
  ];
  const total = sum(parts);
  return {
    mic: placed.mic.id,
    input: placed.mic.input,
    route: way.route,
    parts,
    total,
    through: way.through,
  };
}

const sum = (parts: readonly RunPart[]): Mm =>
  parts.reduce((total, { length }) => total + length, 0);
