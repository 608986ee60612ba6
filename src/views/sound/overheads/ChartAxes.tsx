import { showLengthNumber } from '../../../units/lengthText.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { figure } from '../words/amounts.ts';
import { CHART, type ChartScales } from './chartSize.ts';

const HEIGHT_TICKS = [400, 600, 800, 1000, 1200, 1400];

/** Grid, figures and units of the chart. */
export function ChartAxes({ scales: { x, y } }: { readonly scales: ChartScales }) {
  const { units } = useOpen().layout;
  const foot = CHART.height - CHART.bottom;
  return (
    <g>
      {y.ticks(5).map((level) => (
        <g key={level}>
          <line
            className="chart-grid"
            x1={CHART.left}
            x2={CHART.width - CHART.right}
            y1={y(level)}
            y2={y(level)}
          />
          <text className="chart-text" x={CHART.left - 6} y={y(level) + 5} textAnchor="end">
            {figure(level, 0)}
          </text>
        </g>
      ))}
      {HEIGHT_TICKS.map((height) => (
        <text key={height} className="chart-text" x={x(height)} y={foot + 22} textAnchor="middle">
          {showLengthNumber(height, units)}
        </text>
      ))}
      <text className="chart-text" x={2} y={12}>
        dB
      </text>
      <text className="chart-text" x={CHART.width - CHART.right} y={foot + 40} textAnchor="end">
        {units} over the highest cymbal
      </text>
    </g>
  );
}
