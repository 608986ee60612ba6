import type { RingOfMic } from '../../report/ring.ts';
import { wrapDegrees } from '../../units/angle.ts';
import type { Degrees } from '../../units/quantity.ts';

type Arc = RingOfMic['arcs'][number];

/** The arcs of a ring, the one that runs over 0 degrees as one (from below 0). */
export function wholeArcs(arcs: readonly Arc[]): readonly Arc[] {
  const [first, last] = [arcs[0], arcs.at(-1)];
  if (!first || !last || arcs.length < 2 || first.verdict !== last.verdict) return arcs;
  return [{ ...first, from: last.from - 360 }, ...arcs.slice(1, -1)];
}

/** How far inside a clear arc its end is taken: the ends of arcs are exact to half a degree. */
const INSET: Degrees = 0.5;

/** The last clear places at both ends of every clear arc: where a clip is clear, and a little farther it is not. */
export function clearEnds(arcs: readonly Arc[]): readonly Degrees[] {
  return wholeArcs(arcs)
    .filter(({ verdict, from, to }) => verdict === 'clear' && to - from < 360)
    .flatMap(({ from, to }) => {
      const inset = Math.min(INSET, (to - from) / 2);
      return [wrapDegrees(from + inset), wrapDegrees(to - inset)];
    });
}
