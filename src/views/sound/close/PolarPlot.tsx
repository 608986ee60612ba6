import { scaleLinear } from 'd3-scale';
import { lineRadial } from 'd3-shape';
import {
  type CloseRow,
  DEEPEST_NULL,
  type HearingRow,
  patternLevel,
} from '../../../report/sound.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { nameOf } from '../../words/nameOf.ts';
import { NumbersTable } from '../NumbersTable.tsx';
import { changeWords, figure } from '../words/amounts.ts';
import { nullWords } from '../words/closeWords.ts';
import { type PolarPoint, polarPoints } from './polar.ts';

const SIZE = 352;
const MIDDLE = SIZE / 2;
const RINGS = [-20, -10, 0];
/** Pieces that are drawn with their number; the softer ones would cover each other. */
const NUMBERED = 6;
const ANGLES = Array.from({ length: 181 }, (_, i) => i * 2);

/** Levels against the own source, from the middle out; louder than the rim is drawn on it. */
const radius = scaleLinear()
  .domain([-30, 6])
  .range([0, MIDDLE - 18])
  .clamp(true);
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

interface PolarPlotProps {
  readonly row: CloseRow;
  readonly hearing: HearingRow;
}

/** A mic's pattern with every piece at its angle off the axis and its level against the own source. */
export function PolarPlot({ row, hearing }: PolarPlotProps) {
  const { layout, report } = useOpen();
  const placed = report.rig.mics.find(({ mic }) => mic.id === row.mic);
  const points = polarPoints(row, placed?.tip.x ?? 0, hearing.pattern);
  const name = nameOf(layout, row.mic);
  const numbered = points.map(({ number, piece }) =>
    number === 0 ? `Own: ${nameOf(layout, piece)}` : `${number} ${nameOf(layout, piece)}`,
  );
  const rest = points.length > NUMBERED + 1 ? ['small: softer ones'] : [];
  const legend = [...numbered.slice(0, NUMBERED + 1), ...rest].join(', ');
  return (
    <figure className="sound-chart">
      <svg viewBox={`0 0 ${SIZE} ${SIZE}`} role="img" aria-label={`Polar plot of ${name}`}>
        <Rings />
        <path
          className="chart-pattern"
          transform={`translate(${MIDDLE} ${MIDDLE})`}
          d={patternPath(hearing)}
        />
        {hearing.nullAngle !== null && <NullRays angle={hearing.nullAngle} />}
        {points.toReversed().map((point) => (
          <Point key={point.piece} point={point} />
        ))}
      </svg>
      <figcaption className="soft small">
        Up: where it looks. Line: its pattern, dashed: its null, claimed {DEEPEST_NULL} dB deep at
        most. Pieces to the player’s left of the mic are on the left. {legend}.
      </figcaption>
      {row.shell === null && <p>{nullWords(points, hearing, layout)}</p>}
      <NumbersTable
        caption={`the polar plot of ${name}`}
        head={['Piece', 'Off axis', 'Against own']}
        rows={points.map((point, i) => [
          numbered[i] ?? '',
          `${figure(point.angle, 0)}° ${point.side}${point.inNull ? ', in the null' : ''}`,
          changeWords(point.level),
        ])}
      />
    </figure>
  );
}

function Rings() {
  return (
    <g transform={`translate(${MIDDLE} ${MIDDLE})`}>
      {RINGS.map((level) => (
        <circle key={level} className="chart-grid" r={radius(level)} />
      ))}
      <line className="chart-grid" x1={0} x2={0} y1={-radius(6)} y2={radius(6)} />
      <line className="chart-grid" x1={-radius(6)} x2={radius(6)} y1={0} y2={0} />
      {RINGS.map((level) => (
        <text key={level} className="chart-text" x={4} y={radius(level) - 4}>
          {figure(level, 0)}
        </text>
      ))}
    </g>
  );
}

function NullRays({ angle }: { readonly angle: number }) {
  const end = radius(6);
  return (
    <g transform={`translate(${MIDDLE} ${MIDDLE})`}>
      {[-angle, angle].map((at) => (
        <line
          key={at}
          className="chart-null"
          x2={end * Math.sin(radians(at))}
          y2={-end * Math.cos(radians(at))}
        />
      ))}
    </g>
  );
}

function Point({ point }: { readonly point: PolarPoint }) {
  const at = radians(point.side === 'left' ? -point.angle : point.angle);
  const out = radius(point.level);
  const isOwn = point.number === 0;
  const hasNumber = !isOwn && point.number <= NUMBERED;
  return (
    <g
      className={isOwn ? 'chart-own' : point.inNull ? 'chart-point in-null' : 'chart-point'}
      transform={`translate(${MIDDLE + out * Math.sin(at)} ${MIDDLE - out * Math.cos(at)})`}
    >
      <circle r={isOwn || hasNumber ? 12 : 5} />
      {hasNumber && (
        <text textAnchor="middle" dy={5}>
          {point.number}
        </text>
      )}
    </g>
  );
}

const patternPath = ({ pattern }: HearingRow): string | undefined =>
  lineRadial<number>()
    .angle(radians)
    .radius((angle) => radius(patternLevel(pattern, angle)))(ANGLES) ?? undefined;
