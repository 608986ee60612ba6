import type { Layout } from '../../layout/layout.ts';
import type { FoundSpot } from '../../report/boxSpots.ts';
import type { Report } from '../../report/report.ts';
import type { SpotMeasure } from '../../session/boxSearch.ts';
import { showLongLength } from '../../units/lengthText.ts';

const EDGES: Readonly<Record<FoundSpot['edge'], string>> = {
  front: 'Front edge',
  back: 'Back edge',
  left: "Player's left edge",
  right: "Player's right edge",
};

/** Nearer to the middle of an edge a spot is in its middle, mm. */
const MIDDLE = 50;

/** Where a spot is: `Front edge, 0.8 m to the player's right`. */
export function spotPlaceWords(
  { edge, along }: FoundSpot,
  { units }: Pick<Layout, 'units'>,
): string {
  if (Math.abs(along) < MIDDLE) return `${EDGES[edge]}, in the middle`;
  const isAcross = edge === 'front' || edge === 'back';
  const [low, high] = isAcross
    ? ["to the player's left", "to the player's right"]
    : ['toward the back', 'toward the audience'];
  return `${EDGES[edge]}, ${showLongLength(Math.abs(along), units)} ${along < 0 ? low : high}`;
}

/** What the cables need there, each run on its own shortest way: `single ways 74.2 m, longest 6.1 m`. */
export function spotNeedWords(spot: FoundSpot, { units }: Pick<Layout, 'units'>): string {
  const long = (length: number): string => showLongLength(length, units);
  const blocked = spot.blocked === 0 ? '' : `; ${spot.blocked} without a free way`;
  return `single ways ${long(spot.cable)}, longest ${long(spot.longest)}${blocked}`;
}

/** How that compares with where the box stands, each run on its own shortest way: `4.6 m less than now`. */
export function spotGainWords(
  spot: FoundSpot,
  { runs }: Pick<Report, 'runs'>,
  { by, units }: { readonly by: SpotMeasure } & Pick<Layout, 'units'>,
): string {
  const now =
    by === 'cable'
      ? runs.reduce((sum, { shortest }) => sum + shortest, 0)
      : runs.reduce((longest, { shortest }) => Math.max(longest, shortest), 0);
  const change = spot[by] - now;
  const size = showLongLength(Math.abs(change), units);
  if (/^0\.0 /.test(size)) return 'as now';
  return `${size} ${change < 0 ? 'less' : 'more'} than now`;
}

/** What the spot that the box stands at came to, in the totals' own measure: `The box stands at spot A. Cable laid: 68.9 m, 2.1 m of it by the loom`. */
export function spotTakenWords(
  letter: string,
  { totals }: Pick<Report, 'totals'>,
  { units }: Pick<Layout, 'units'>,
): string {
  const [cable, extra] = [totals.cable, totals.extra].map((length) =>
    showLongLength(length, units),
  );
  return `The box stands at spot ${letter}. Cable laid: ${cable}, ${extra} of it by the loom`;
}
