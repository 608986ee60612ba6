import type { Layout } from '../../layout/layout.ts';
import { isCymbal, type Piece } from '../../layout/pieces/piece.ts';

/** Room round the kit, mm. */
const BORDER = 70;

/** A small plan of a kit as the audience sees it: the player at the top. For recognising, not for measuring. */
export function KitPicture({ layout }: { readonly layout: Layout }) {
  const pieces = layout.pieces.map(outlineOf);
  const left = Math.min(-500, ...pieces.map((piece) => piece.x - piece.reach)) - BORDER;
  const right = Math.max(500, ...pieces.map((piece) => piece.x + piece.reach)) + BORDER;
  const back = Math.min(-170, ...pieces.map((piece) => piece.y - piece.reach)) - BORDER;
  const front = Math.max(900, ...pieces.map((piece) => piece.y + piece.reach)) + BORDER;
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
        {pieces
          .toSorted((a, b) => a.level - b.level)
          .map((piece) => (
            <OutlineShape key={piece.id} outline={piece} />
          ))}
      </g>
    </svg>
  );
}

interface Outline {
  readonly id: string;
  readonly look: 'drum' | 'cymbal' | 'kick' | 'other';
  readonly x: number;
  readonly y: number;
  readonly reach: number;
  readonly width: number;
  readonly length: number;
  readonly turn: number;
  readonly level: number;
}

function outlineOf(piece: Piece): Outline {
  const { id } = piece;
  if (piece.kind === 'throne') {
    const round = piece.diameter;
    return {
      id,
      look: 'other',
      x: 0,
      y: 0,
      reach: round / 2,
      width: round,
      length: round,
      turn: 0,
      level: 1,
    };
  }
  const { x, y } = piece;
  if (piece.kind === 'pedal') {
    const { length, width, turn } = piece;
    return { id, look: 'other', x, y, reach: length, width, length, turn, level: 0 };
  }
  const reach = piece.diameter / 2;
  if (piece.kind === 'kick') {
    const { depth, diameter, turn } = piece;
    return { id, look: 'kick', x, y, reach, width: diameter, length: depth, turn, level: 2 };
  }
  const cymbal = isCymbal(piece) || piece.kind === 'hiHat';
  const size = { width: piece.diameter, length: piece.diameter, turn: 0 };
  return { id, look: cymbal ? 'cymbal' : 'drum', x, y, reach, ...size, level: cymbal ? 4 : 3 };
}

function OutlineShape({ outline }: { readonly outline: Outline }) {
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
