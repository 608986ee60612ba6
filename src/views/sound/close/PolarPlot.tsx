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
import { clockAngle, type PolarPoint, polarPoints, rimAngles } from './polar.ts';

const SIZE = 352;
const MIDDLE = SIZE / 2;
const RINGS = [-20, -10, 0];
/** So many of what spills most have a number, and all that sit in the null; others are dots alone. */
const NUMBERED = 5;
const ANGLES = Array.from({ length: 181 }, (_, i) => i * 2);

/** Where numbers stand, and how far apart they must. */
const RIM = MIDDLE - 14;
const NUMBERS_APART = 10;

/** Levels against the own source, from the middle out; louder than the rim is drawn on it. */
const radius = scaleLinear()
  .domain([-30, 6])
  .range([0, RIM - 20])
  .clamp(true);
const isNumbered = ({ number, inNull }: PolarPoint): boolean =>
  number > 0 && (number <= NUMBERED || inNull);
const isSmall = (point: PolarPoint): boolean => point.number > 0 && !isNumbered(point);
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
  const spokes = points.filter(isNumbered);
  const rims = rimAngles(spokes.map(clockAngle), NUMBERS_APART);
  const name = nameOf(layout, row.mic);
  const numbered = points.map(({ number, piece }) =>
    number === 0 ? `Own: ${nameOf(layout, piece)}` : `${number} ${nameOf(layout, piece)}`,
  );
  const rest = points.some(isSmall) ? ['small: softer ones'] : [];
  const legend = [...numbered.filter((_, i) => !points.slice(i, i + 1).some(isSmall)), ...rest];
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
        {points
          .filter((point) => !isNumbered(point))
          .map((point) => (
            <Dot key={point.piece} point={point} />
          ))}
        {spokes.map((point, i) => (
          <Spoke key={point.piece} point={point} rim={rims[i] ?? 0} />
        ))}
      </svg>
      <figcaption className="soft small">
        Up: where it looks. Dots: level against its own source. Line: its pattern, dashed: its null,
        claimed {DEEPEST_NULL} dB deep at most. Pieces to the player’s left of the mic are on the
        left. {legend.join(', ')}.
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

/** A piece as a spoke at its angle: its number at the rim, a dot at its level. */
function Spoke({ point, rim }: { readonly point: PolarPoint; readonly rim: number }) {
  const end = onCircle(rim, RIM);
  const dot = onCircle(clockAngle(point), radius(point.level));
  return (
    <g
      className={point.inNull ? 'chart-point in-null' : 'chart-point'}
      transform={`translate(${MIDDLE} ${MIDDLE})`}
    >
      <line x1={dot.x} y1={dot.y} x2={end.x} y2={end.y} />
      <circle className="chart-level" cx={dot.x} cy={dot.y} r={5} />
      <circle cx={end.x} cy={end.y} r={12} />
      <text x={end.x} y={end.y + 5} textAnchor="middle">
        {point.number}
      </text>
    </g>
  );
}

/** The own source, or a piece too soft for a number: a dot alone. */
function Dot({ point }: { readonly point: PolarPoint }) {
  const { x, y } = onCircle(clockAngle(point), radius(point.level));
  const isOwn = point.number === 0;
  return (
    <g
      className={isOwn ? 'chart-own' : 'chart-point'}
      transform={`translate(${MIDDLE + x} ${MIDDLE + y})`}
    >
      <circle r={isOwn ? 10 : 4} />
    </g>
  );
}

const onCircle = (angle: number, out: number) => ({
  x: out * Math.sin(radians(angle)),
  y: -out * Math.cos(radians(angle)),
});

const patternPath = ({ pattern }: HearingRow): string | undefined =>
  lineRadial<number>()
    .angle(radians)
    .radius((angle) => radius(patternLevel(pattern, angle)))(ANGLES) ?? undefined;
