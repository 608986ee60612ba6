import { gap } from '../../geometry/plan.ts';
import type { Vec2 } from '../../geometry/vector.ts';
import type { FloorReport } from '../../report/floor.ts';
import { showLengthNumber } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import { isStrong } from '../shapes/contours.ts';
import { kitToScreen } from '../view/kitView.ts';
import { formOf, type LabelLook, type Lettering } from './lettering.ts';
import { onScreen } from './placeLabels.ts';
import { alongLine } from './spots.ts';
import { type Lettered, RANK } from './wishes.ts';

type Contour = FloorReport['contours'][number];
type Ring = Contour['rings'][number];

const look: LabelLook = { kind: 'contour' };

/** Px that heights keep from each other: nearer together they hide the kit and tell no more. */
const APART = 24;

/** Heights on the contours of the stick floor, each written once where there is room; those that matter most choose first. */
export function contourLabels(lettered: Lettered, floor: FloorReport | null): readonly Lettering[] {
  if (!floor) return [];
  const { layout, kitView, measure } = lettered;
  const tip = tipHeight(lettered);
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
          rank: RANK.deck - urgency(height, floor.step, tip),
          apart: APART,
          must: false,
        },
      },
    ];
  });
}

/** How high the selected mic's tip is; undefined while none is selected. */
const tipHeight = ({ report, selection }: Lettered): Mm | undefined =>
  selection?.kind === 'mic'
    ? report.rig.mics.find(({ mic }) => mic.id === selection.id)?.tip.z
    : undefined;

/** Between 0 and 1: the nearer to the selected mic's height, the more; with none selected, the strong lines before the even ones. */
function urgency(height: Mm, step: Mm, tip: Mm | undefined): number {
  if (tip !== undefined) return step / (step + Math.abs(height - tip));
  if (isStrong(height, step)) return 0.9;
  return Math.round(height / step) % 2 === 0 ? 0.6 : 0.3;
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
