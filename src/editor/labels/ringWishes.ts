import type { Layout } from '../../layout/layout.ts';
import { withPlanned } from '../../report/plannedRing.ts';
import { clipIn, type RingOfMic, type RingPlace } from '../../report/ring.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { wholeArcs } from '../rim/arcs.ts';
import { besideRim, RING_OUT } from '../rim/rimLine.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import type { ScreenPoint } from '../view/view.ts';
import { arcText } from '../words.ts';
import { formOf, type LabelLook, type Lettering } from './lettering.ts';
import { type Box, boxAbout, type LabelSpot } from './placeLabels.ts';
import { roundAbout } from './spots.ts';
import { type Lettered, RANK } from './wishes.ts';

/** An arc shorter than this on the screen carries no word, px. */
const LEAST_ARC = 26;
/** Shares of an arc where its word may stand. */
const SHARES = [0.5, 0.3, 0.7] as const;
const VERDICTS = ['struck', 'tight', 'clear'] as const;

/** The words beside a ring's arcs, each once, at the longest of its arcs that has room for it, and the clearance at the place of it that was asked about. */
export function ringLabels(
  lettered: Lettered,
  ring: RingOfMic | null,
  asked: RingPlace | null,
): readonly Lettering[] {
  const clip = ring && clipIn(withPlanned(lettered.layout, ring), ring.mic);
  if (!clip) return [];
  const { layout, kitView, measure } = lettered;
  const { drum } = clip;
  const { scale } = kitView.view;
  const at = (angle: number): ScreenPoint =>
    kitToScreen(kitView, besideRim(drum, angle, RING_OUT / scale));
  const pxPerDegree = (drum.diameter / 2) * scale * (Math.PI / 180);
  const long = wholeArcs(ring.arcs)
    .filter(({ from, to }) => (to - from) * pxPerDegree >= LEAST_ARC)
    .toSorted((a, b) => b.to - b.from - (a.to - a.from));
  const words = VERDICTS.flatMap((verdict): readonly Lettering[] => {
    const angles = long
      .filter((arc) => arc.verdict === verdict)
      .flatMap(({ from, to }) => SHARES.map((share) => from + share * (to - from)));
    const [first] = angles;
    if (first === undefined) return [];
    const look: LabelLook = { kind: 'verdict', verdict, strong: false };
    const middle = at(first);
    const spots = angles.flatMap((angle) => outward(at(angle), middle, kitView, drum));
    const forms = [formOf(arcText(verdict), look, measure)];
    // What mics and pieces say comes first: from afar there is no room for both, and the ring's own lines tell its verdicts.
    const rank = RANK.clear + 0.5;
    return [{ look, wish: { key: `arc ${verdict}`, at: middle, spots, forms, rank, must: false } }];
  });
  if (!asked) return words;
  const look: LabelLook = { kind: 'measure', verdict: asked.verdict };
  const forms = [formOf(showClearance(asked.clearance, layout), look, measure)];
  const wish = { key: 'asked', at: at(asked.angle), spots: roundAbout(14), forms };
  return [...words, { look, wish: { ...wish, rank: RANK.selected, must: true } }];
}

/** Px from box to box round a ring, and from its line to the edge of a box. */
const ROUND_STEP = 10;
const BESIDE_LINE = 4;

/** Where labels should not stand, so that the ring is seen all round, under its own mic's name too. */
export function ringBoxes(
  layout: Layout,
  ring: RingOfMic | null,
  kitView: KitView,
): readonly Box[] {
  const clip = ring && clipIn(withPlanned(layout, ring), ring.mic);
  if (!clip) return [];
  const { drum } = clip;
  const { scale } = kitView.view;
  const count = Math.ceil((Math.PI * drum.diameter * scale) / ROUND_STEP);
  return Array.from({ length: count }, (_, i) => {
    const spot = besideRim(drum, (i * 360) / count, RING_OUT / scale);
    return boxAbout(kitToScreen(kitView, spot), BESIDE_LINE);
  });
}

/** Places for a word outside the ring beside one of its points, relative to `from`. */
function outward(
  point: ScreenPoint,
  from: ScreenPoint,
  kitView: KitView,
  drum: { readonly x: number; readonly y: number },
): readonly LabelSpot[] {
  const middle = kitToScreen(kitView, drum);
  const size = Math.hypot(point.x - middle.x, point.y - middle.y) || 1;
  const [x, y] = [(point.x - middle.x) / size, (point.y - middle.y) / size];
  // The label touches the point with the side that faces the drum.
  const side = (value: number): number => (Math.abs(value) > 0.4 ? Math.sign(value) : 0);
  const names = { x: point.x - from.x, y: point.y - from.y };
  return [12, 26].map((out) => ({
    names,
    x: point.x - from.x + x * out,
    y: point.y - from.y + y * out,
    sideX: side(x),
    sideY: side(y),
  }));
}
