import { describe, expect, it } from 'vitest';
import {
  BOWS,
  MoveStretches,
  PIECES,
  partOf,
  stretchOf,
} from '../../src/clearance/moveStretches.ts';
import { SweptMoves } from '../../src/clearance/sweptMoves.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { GRIP, POSITION } from '../../src/player/arm.ts';
import { playingOf } from '../../src/player/moves.ts';
import { seededKits } from '../support/randomKit.ts';
import { startingKit } from './kits.ts';

/** One part in one stretch of one move. */
interface Looked {
  readonly piece: number;
  readonly move: number;
  readonly from: number;
  readonly length: number;
}

/** Some parts in the whole of some moves, and in halves of halves of them, always another half. */
function someStretches(
  [stretches, swept]: readonly [MoveStretches, SweptMoves],
  every: number,
  depth: number,
): readonly Looked[] {
  const wholes = [...stretches.whole(swept)].map(
    (piece): Looked => ({ piece, move: stretchOf(piece), from: 0, length: 1 }),
  );
  return wholes
    .filter((_, k) => k % every === 0)
    .flatMap((whole, k) => {
      const line = [whole];
      for (let level = 0; level < depth; level++) {
        const last = line.at(-1) ?? whole;
        const second = (k >> level) % 2;
        const length = last.length / 2;
        const piece = stretches.halved(last.piece) + second * PIECES;
        line.push({ piece, move: last.move, from: last.from + second * length, length });
      }
      return line;
    });
}

const TIMES = [0, 0.13, 0.31, 0.5, 0.62, 0.87, 1];

/** How far any point of a part gets beyond its slack in some stretches of a kit, and in how many that was looked at. */
function beyondSlack({ player, pieces }: Layout) {
  const swept = new SweptMoves(playingOf(player, pieces));
  const stretches = new MoveStretches(swept.arm);
  const looked = someStretches([stretches, swept], 5, 7);
  const hand = new Float64Array(POSITION);
  let beyond = Number.NEGATIVE_INFINITY;
  for (const { piece, move: index, from, length } of looked) {
    const move = swept.moves[index]?.move;
    const part = swept.arm.parts[partOf(piece)];
    if (!move || !part) throw new Error('expected a move and a part');
    const side = move.side === 'right' ? 1 : -1;
    const middle = stretchOf(piece) * POSITION;
    for (const t of TIMES) {
      move.write(from + t * length, hand, 0);
      // A point between the ends of an axis is no farther from its place than the farther end: both are straight.
      for (const end of [part.at, part.at + 3]) {
        const [x = 0, y = 0, z = 0] = hand.subarray(end, end + 3);
        const [mx = 0, my = 0, mz = 0] = stretches.middles.subarray(middle + end, middle + end + 3);
        const off = Math.hypot(side * x - mx, y - my, z - mz);
        beyond = Math.max(beyond, off - (stretches.slack[piece] ?? 0));
      }
    }
  }
  return { beyond, looked: looked.length };
}

/** How far the elbow's room falls short of that of a grip whose way is as long as it really is, by chords of it. */
function shortOfRoom({ player, pieces }: Layout) {
  const swept = new SweptMoves(playingOf(player, pieces));
  const stretches = new MoveStretches(swept.arm);
  const [before, hand] = [new Float64Array(POSITION), new Float64Array(POSITION)];
  const start = new Float64Array(POSITION);
  let short = Number.NEGATIVE_INFINITY;
  for (const { piece, move: index, from, length } of someStretches([stretches, swept], 31, 4)) {
    const move = swept.moves[index]?.move;
    if (!move) throw new Error('expected a move');
    move.write(from, start, 0);
    before.set(start);
    let way = 0;
    for (let k = 1; k <= CHORDS; k++) {
      move.write(from + (length * k) / CHORDS, hand, 0);
      const [x = 0, y = 0, z = 0] = hand.subarray(GRIP, GRIP + 3);
      const [bx = 0, by = 0, bz = 0] = before.subarray(GRIP, GRIP + 3);
      way += Math.hypot(x - bx, y - by, z - bz);
      before.set(hand);
    }
    const room = stretches.bows[stretchOf(piece) * BOWS + 3] ?? 0;
    short = Math.max(short, swept.arm.elbowRoom(start, 0, way) - room);
  }
  return short;
}
const CHORDS = 60;

describe('rule C5: the slack of a stretch', () => {
  it('no point of a part is ever farther from its place in the middle', () => {
    let looked = 0;
    for (const kit of [startingKit('large-kit'), ...seededKits(12, 93)]) {
      const found = beyondSlack(kit);
      looked += found.looked;
      expect(found.beyond, kit.name).toBeLessThanOrEqual(1e-6);
    }
    expect(looked).toBeGreaterThan(1000);
  });

  it('the room of the elbow is that of a way at least as long as the grip goes', () => {
    for (const kit of [startingKit('large-kit'), ...seededKits(6, 94)]) {
      expect(shortOfRoom(kit), kit.name).toBeLessThanOrEqual(1e-6);
    }
  });

  it('shrinks with the stretch: halved ten times it is below a centimetre', () => {
    const { player, pieces } = startingKit('five-piece-two-racks');
    const swept = new SweptMoves(playingOf(player, pieces));
    const stretches = new MoveStretches(swept.arm);
    for (const { piece, length } of someStretches([stretches, swept], 11, 10)) {
      if (length < 2 ** -9.5) expect(stretches.slack[piece]).toBeLessThan(10);
    }
  });
});
