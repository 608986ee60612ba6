import type { PieceOutline } from '../../layout/kitOutline.ts';

/** Room round the kit, mm. */
const BORDER = 70;

/** A small plan of a kit as the audience sees it: the player at the top. For recognising, not for measuring. */
export function KitPicture({ outline }: { readonly outline: readonly PieceOutline[] }) {
  const reaches = outline.map(({ x, y, width, length }) => ({
    x,
    y,
    reach: reachOf(width, length),
  }));
  const left = Math.min(-500, ...reaches.map(({ x, reach }) => x - reach)) - BORDER;
  const right = Math.max(500, ...reaches.map(({ x, reach }) => x + reach)) + BORDER;
  const back = Math.min(-170, ...reaches.map(({ y, reach }) => y - reach)) - BORDER;
  const front = Math.max(900, ...reaches.map(({ y, reach }) => y + reach)) + BORDER;
  // The audience looks from +y: its left is the player's right.
  return (
    <svg
      className="kit-picture"
      viewBox={`${-right} ${back} ${right - left} ${front - back}`}
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true"
      focusable="false"
    >
      <g transform="scale(-1 1)">
        {outline.map((piece) => (
          <OutlineShape key={Object.values(piece).join(' ')} outline={piece} />
        ))}
      </g>
    </svg>
  );
}

const reachOf = (width: number, length: number): number =>
  width === length ? width / 2 : Math.max(width / 2, length);

function OutlineShape({ outline }: { readonly outline: PieceOutline }) {
  const { look, x, y, width, length, turn } = outline;
  if (look === 'kick' || width !== length) {
    // A pedal is placed by its heel, a kick by its middle.
    const start = look === 'kick' ? -length / 2 : 0;
    return (
      <rect
        className={`picture-${look}`}
        x={start}
        y={-width / 2}
        width={length}
        height={width}
        rx={20}
        transform={`translate(${x} ${y}) rotate(${turn})`}
      />
    );
  }
  return (
    <>
      <circle className={`picture-${look}`} cx={x} cy={y} r={width / 2} />
      {look === 'cymbal' && <circle className="picture-bell" cx={x} cy={y} r={width * 0.1} />}
    </>
  );
}
