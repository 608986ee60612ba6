import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { type PointerEvent, useEffect, useRef } from 'react';
import type { HeightRow, OverheadSound } from '../../../report/sound.ts';
import {
  beginGesture,
  cancelGesture,
  commitGesture,
  type Gesture,
  previewGesture,
} from '../../../session/session.ts';
import { showLength } from '../../../units/lengthText.ts';
import type { Mm } from '../../../units/quantity.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { NumbersTable } from '../NumbersTable.tsx';
import { changeWords, differenceWords } from '../words/amounts.ts';
import { enoughWords } from '../words/overheadWords.ts';
import { ChartAxes } from './ChartAxes.tsx';
import { CHART, type ChartScales } from './chartSize.ts';
import { HEIGHTS, raiseOverheads } from './moveOverheads.ts';

interface HeightChartProps {
  readonly overheads: OverheadSound;
  /** Height of the highest cymbal above the deck. */
  readonly top: Mm;
}

/** Spread and level over wash against the overheads' height. Dragging over it moves them. */
export function HeightChart({ overheads, top }: HeightChartProps) {
  const { units } = useOpen().layout;
  const { rows, enough } = overheads.heights;
  const drag = useHeightDrag(overheads, top);
  if (rows.length === 0) return null;
  const scales = scalesOf(rows);
  return (
    <figure className="sound-chart">
      <svg
        viewBox={`0 0 ${CHART.width} ${CHART.height}`}
        role="img"
        aria-label="Spread of the cymbals and level over the stage wash against overhead height"
        className="chart-drag"
        {...drag}
      >
        <ChartAxes scales={scales} />
        <Curves rows={rows} scales={scales} />
        {enough !== null && <EnoughMark x={scales.x(enough)} />}
        {overheads.mics.map(({ mic, height }) => (
          <NowMark key={mic} x={scales.x(height ?? HEIGHTS.low)} />
        ))}
      </svg>
      <figcaption className="soft small">
        Solid: spread of the cymbals, less is more even. Dashed: level over stage wash, more is
        cleaner. Drag to move the overheads. {enoughWords(enough, units)}
      </figcaption>
      <NumbersTable
        caption="the heights chart"
        head={['Height', 'Spread', 'Over wash', 'Snare right − left']}
        rows={rows.map((row) => [
          showLength(row.height, units),
          differenceWords(row.spread),
          differenceWords(row.overWash),
          row.balance === null ? '–' : changeWords(row.balance),
        ])}
      />
    </figure>
  );
}

function scalesOf(rows: readonly HeightRow[]): ChartScales {
  const values = rows.flatMap(({ spread, overWash }) => [spread, overWash]).filter(Number.isFinite);
  return {
    x: scaleLinear()
      .domain([HEIGHTS.low, HEIGHTS.high])
      .range([CHART.left, CHART.width - CHART.right])
      .clamp(true),
    y: scaleLinear()
      .domain([Math.min(0, ...values), Math.max(1, ...values)])
      .nice()
      .range([CHART.height - CHART.bottom, CHART.top]),
  };
}

interface CurvesProps {
  readonly rows: readonly HeightRow[];
  readonly scales: ChartScales;
}

function Curves({ rows, scales: { x, y } }: CurvesProps) {
  const pathOf = (value: (row: HeightRow) => number) =>
    line<HeightRow>()
      .defined((row) => Number.isFinite(value(row)))
      .x((row) => x(row.height))
      .y((row) => y(value(row)))(rows) ?? undefined;
  return (
    <>
      <path className="chart-spread" d={pathOf(({ spread }) => spread)} />
      <path className="chart-wash" d={pathOf(({ overWash }) => overWash)} />
    </>
  );
}

function EnoughMark({ x }: { readonly x: number }) {
  const end = x > CHART.width / 2 ? 'end' : 'start';
  return (
    <g className="chart-enough">
      <line x1={x} x2={x} y1={CHART.top} y2={CHART.height - CHART.bottom} />
      <text x={x + (end === 'end' ? -5 : 5)} y={CHART.top + 4} textAnchor={end}>
        enough
      </text>
    </g>
  );
}

function NowMark({ x }: { readonly x: number }) {
  return (
    <g className="chart-now">
      <line x1={x} x2={x} y1={CHART.top} y2={CHART.height - CHART.bottom} />
      <circle cx={x} cy={CHART.height - CHART.bottom} r={9} />
    </g>
  );
}

/** A drag over the chart is one undoable step that puts all overheads to the height under the finger. */
function useHeightDrag({ mics, heights }: OverheadSound, top: Mm) {
  const dragging = useRef<Gesture | null>(null);
  const move = (event: PointerEvent<SVGSVGElement>) => {
    const { left, width } = event.currentTarget.getBoundingClientRect();
    const at = ((event.clientX - left) / width) * CHART.width;
    const height = Math.round(scalesOf(heights.rows).x.invert(at) / 10) * 10;
    previewGesture(
      (layout) =>
        raiseOverheads(
          layout,
          mics.map(({ mic }) => mic),
          top + height,
        ),
      dragging.current,
    );
  };
  const end = (finish: (gesture: Gesture | null) => void) => () => {
    finish(dragging.current);
    dragging.current = null;
  };
  // A chart that goes away takes its drag with it: no finger could end it any more.
  useEffect(() => () => cancelGesture(dragging.current), []);
  return {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      dragging.current = beginGesture('Overhead height');
      move(event);
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (dragging.current) move(event);
    },
    onPointerUp: end(commitGesture),
    onPointerCancel: end(cancelGesture),
  };
}
