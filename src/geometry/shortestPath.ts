import type { Mm } from '../units/quantity.ts';
import type { ConvexPolygon } from './convexPolygon.ts';
import { listed } from './listed.ts';
import { gap, type Rectangle } from './plan.ts';
import { Tangents } from './tangents.ts';
import type { Frame, Vec2 } from './vector.ts';
import { WaySearch } from './waySearch.ts';

/** One end of a way; the stretch that begins or ends here may pass through the obstacles in `free` (places in the list). */
export interface WayEnd<F extends Frame = 'kit'> {
  readonly point: Vec2<F>;
  readonly free?: ReadonlySet<number>;
}

/** A shortest way: its points from end to end, and its length in mm. */
export interface Way<F extends Frame = 'kit'> {
  readonly points: readonly Vec2<F>[];
  readonly length: Mm;
  /** The obstacles it rests on (places in the list): were all others taken away, no way would be shorter. */
  readonly restsOn: readonly number[];
}

export interface Router<F extends Frame = 'kit'> {
  /** The straight ways it has found out about, for other searches among the same obstacles. */
  readonly tangents: Tangents<F>;
  /** The shortest way among the obstacles; undefined when there is none. Of several, always the same one. */
  route(from: WayEnd<F>, to: WayEnd<F>): Way<F> | undefined;
}

/** Shortest ways among convex obstacles on the plan, which may overlap; within `region` where one is given. */
export function createRouter<F extends Frame>(
  obstacles: readonly ConvexPolygon<F>[],
  region?: Rectangle<F>,
): Router<F> {
  const tangents = new Tangents(obstacles, region);
  const search = new WaySearch(tangents);
  return {
    tangents,
    route(from, to) {
      const start = tangents.place(from.point, from.free);
      const goal = [{ point: to.point, place: tangents.place(to.point, to.free), rest: 0 }];
      const goals = {
        ahead: (point: Vec2<F>) => gap(point, to.point),
        from: () => goal,
        accepts: () => true,
      };
      const found = search.run(start, goals, Number.POSITIVE_INFINITY);
      if (!found) return undefined;
      const points = listed(found.places, ({ point }) => point);
      return { points, length: found.length, restsOn: found.restsOn };
    },
  };
}
