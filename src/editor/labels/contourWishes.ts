import { gap } from '../../geometry/plan.ts';
import type { Vec2 } from '../../geometry/vector.ts';
import type { FloorReport } from '../../report/floor.ts';
import { showLengthNumber } from '../../units/lengthText.ts';
import { kitToScreen } from '../view/kitView.ts';
import { formOf, type LabelLook, type Lettering } from './lettering.ts';
import { onScreen } from './placeLabels.ts';
import { alongLine } from './spots.ts';
import { type Lettered, RANK } from './wishes.ts';

type Contour = FloorReport['contours'][number];
type Ring = Contour['rings'][number];

const look: LabelLook = { kind: 'contour' };

/** Heights on the contours of the stick floor, each written once where there is room. */
export function contourLabels(
  { layout, kitView, measure }: Lettered,
  floor: FloorReport | null,
): readonly Lettering[] {
  if (!floor) return [];
  return spotsOf(floor).flatMap(({ height, spots }): readonly Lettering[] => {
    const places = spots
      .map((spot) => kitToScreen(kitView, spot))
      .filter((at) => onScreen(at, kitView.view.size));
    const [first] = places;
    if (!first) return [];
    const text = showLengthNumber(height, layout.units);
    return [
      {
        look,
        wish: {
          key: `contour ${height}`,
          at: first,
          spots: alongLine(places.map(({ x, y }) => ({ x: x - first.x, y: y - first.y }))),
          forms: [formOf(text, look, measure)],
          rank: RANK.deck - 0.5,
          must: false,
        },
      },
    ];
  });
}

interface HeightSpots {
  readonly height: number;
  readonly spots: readonly Vec2[];
}

/** The contours are long lines: where their heights may stand is looked for once, not in every frame of a drag. */
const known = new WeakMap<FloorReport, readonly HeightSpots[]>();

function spotsOf(floor: FloorReport): readonly HeightSpots[] {
  const before = known.get(floor);
  if (before) return before;
  const found = floor.contours.map(({ height, rings }) => ({ height, spots: spotsAlong(rings) }));
  known.set(floor, found);
  return found;
}

/** Spots on the longest ring of a contour. */
const SPOTS = 16;

function spotsAlong(rings: readonly Ring[]): readonly Vec2[] {
  const lengths = rings.map((ring) =>
    ring.reduce((sum, spot, i) => sum + gap(spot, ring[i - 1] ?? spot), 0),
  );
  const longest = Math.max(0, ...lengths);
  const ring = rings[lengths.indexOf(longest)];
  if (!ring) return [];
  const spots: Vec2[] = [];
  let way = 0;
  for (const [i, spot] of ring.entries()) {
    way += gap(spot, ring[i - 1] ?? spot);
    if (way >= ((spots.length + 0.5) / SPOTS) * longest) spots.push(spot);
  }
  return spots;
}
