import { capsuleToCylinder } from '../../geometry/capsuleContact.ts';
import { distance, vec } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import type { PlacedMic, PlacedPiece, Rig } from '../../rig/placed.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Finding } from '../report.ts';

/**
 * From how far away a mic hears more of the room and the rest of the kit than of its own source: nobody puts it there on purpose, so a
 * number was mistyped. Common practice, no source; a mic that is to hear several pieces (overheads, room) may stand farther back.
 */
const FAR: Mm = 3000;
const FAR_FROM_SEVERAL: Mm = 6000;

/**
 * A mic that is there for one piece is a close mic. From so far off the nearest of the piece it is none any more: common practice, no
 * source. It happens where a piece is moved and its mic, on a stand of its own, stays behind.
 */
const CLOSE: Mm = 300;

/**
 * Whether a mic is implausibly far from the nearest piece that it is to hear (`numbers.away`: from its middle, mm), or too far to be the
 * close mic of the only one (`away`: from its edge, mm).
 */
export function distanceFindings(placed: PlacedMic, pieces: Rig['pieces']): readonly Finding[] {
  const { mic, tip } = placed;
  const heard: { readonly one: PlacedPiece; readonly away: Mm }[] = [];
  for (const one of pieces) {
    const { piece } = one;
    if (piece.kind === 'throne' || !mic.hears.includes(piece.id)) continue;
    heard.push({ one, away: toMiddle(placed, piece) });
  }
  heard.sort((a, b) => a.away - b.away);
  const nearest = heard[0];
  if (!nearest) return [];
  const about = [mic.id, nearest.one.piece.id];
  if (nearest.away > (heard.length > 1 ? FAR_FROM_SEVERAL : FAR)) {
    const key = `mic-far-away:${mic.id}`;
    const numbers = { away: nearest.away };
    return [{ key, code: 'mic-far-away', severity: 'warn', about, place: tip, numbers }];
  }
  const away = heard.length > 1 ? 0 : toEdge(placed, nearest.one);
  if (away <= CLOSE) return [];
  const key = `mic-not-close:${mic.id}`;
  return [{ key, code: 'mic-not-close', severity: 'note', about, place: tip, numbers: { away } }];
}

const toMiddle = ({ tip }: PlacedMic, piece: Layout['pieces'][number]): Mm =>
  piece.kind === 'throne'
    ? Number.POSITIVE_INFINITY
    : distance(tip, vec(piece.x, piece.y, 'z' in piece ? piece.z : 0));

/** From the front of a mic to the nearest of a piece that sounds, 0 inside it; 0 where nothing of it does. */
const toEdge = ({ tip }: PlacedMic, { shells }: PlacedPiece): Mm =>
  shells.length === 0
    ? 0
    : Math.max(
        0,
        Math.min(
          ...shells.map((shell) => capsuleToCylinder({ a: tip, b: tip, radius: 0 }, shell).gap),
        ),
      );
