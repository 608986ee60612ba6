import type { FoundSpots } from '../../report/boxSpots.ts';
import { stairsOutward } from '../../rig/stairs.ts';
import type { SpotMeasure } from '../../session/boxSearch.ts';
import { fillPath, type Pen, strokePath, traceDisc } from './pen.ts';

/** Radii of the worst and the best spot, and how far outside the edge they stand, px. */
const LEAST = 2;
const MOST = 8;
const OUT = 12;
/** From the middle of the box, which stands flush with the edge, mm. */
const TO_EDGE = 75;

/** Every spot that was looked at, outside the deck's edge (deck frame): the larger, the better; a ring where a run has no free way. */
export function paintBoxSpots(pen: Pen, { along }: FoundSpots, by: SpotMeasure): void {
  const free = along.filter(({ blocked }) => blocked === 0);
  const values = free.map((spot) => spot[by]);
  const [best, worst] = [Math.min(...values), Math.max(...values)];
  for (const spot of along) {
    const { box, edge, blocked } = spot;
    const out = stairsOutward[edge];
    const beyond = TO_EDGE + OUT * pen.px;
    const share = worst > best ? (worst - spot[by]) / (worst - best) : 1;
    const radius = blocked > 0 ? MOST / 2 : LEAST + (MOST - LEAST) * share;
    traceDisc(pen, { x: box.x + beyond * out.x, y: box.y + beyond * out.y }, radius * pen.px);
    if (blocked > 0) strokePath(pen, pen.colours.box, 1.5);
    else fillPath(pen, pen.colours.box);
  }
}
