import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { isStruck, type Piece } from '../../layout/pieces/piece.ts';
import type { Spot, SpotPoint } from '../../report/placement/spots.ts';
import type { Report } from '../../report/report.ts';
import { toDegrees } from '../../units/angle.ts';
import { clockText } from '../../units/clock.ts';
import { showLength, showLengthNumber } from '../../units/lengthText.ts';
import { nameOf } from './nameOf.ts';

/** With less than this between mast and mic on the deck a boom has no direction, mm. */
const UPRIGHT = 5;

/** How things are set: words and numbers for a hand with a tape. Directions are those of the deck. */

const points: Readonly<Record<SpotPoint, string>> = {
  stand: 'stand',
  middle: 'middle',
  frontHead: 'front head',
  batterHead: 'batter head',
  heel: 'heel',
  toe: 'toe',
  micFront: 'front of the mic',
  frontEdge: 'front edge',
};

/** Which point of a thing is measured: `stand`. */
export const pointWords = (point: SpotPoint): string => points[point];

/** `1250 from the left edge, 830 from the back edge`; outside an edge it says so. */
export function edgeWords({ measures }: Spot, { units }: Pick<Layout, 'units'>): string {
  const from = (length: number, edge: string): string =>
    length < 0
      ? `${showLength(-length, units)} outside the ${edge} edge`
      : `${showLength(length, units)} from the ${edge} edge`;
  return `${from(measures.fromLeft, 'left')}, ${from(measures.fromBack, 'back')}`;
}

/** Nearer than this to the mark a point is at it, mm. */
const AT_MARK = 1;

/** What is measured from the throne mark, mm; null for the throne itself. What else stands over the mark is 0 from it. */
export const fromThroneMark = ({ point, measures: { fromThrone } }: Spot): number | null =>
  point === 'middle' && fromThrone < AT_MARK ? null : fromThrone;

/** What is measured from the kick mark, mm; null without one, and for the kick itself. */
export const fromKickMark = ({ point, measures: { fromKick } }: Spot): number | null =>
  fromKick === null || (point === 'frontHead' && fromKick < AT_MARK) ? null : fromKick;

/** `610 mm from the throne mark, 420 mm from the kick mark`; a mark is not measured from itself. */
export function checkWords(spot: Spot, { units }: Pick<Layout, 'units'>): string {
  const from = (length: number | null, mark: string): readonly string[] =>
    length === null ? [] : [`${showLength(length, units)} from the ${mark} mark`];
  return [...from(fromThroneMark(spot), 'throne'), ...from(fromKickMark(spot), 'kick')].join(', ');
}

/** Where something points on the deck: `toward 1:40`. */
export const towardWords = (azimuth: number, { deck }: Pick<Layout, 'deck'>): string =>
  `toward ${clockText(azimuth + deck.kit.turn)}`;

/** Height and lean of a piece: `head 640 mm high, leaning 12° toward 6:00`; empty where there is nothing to set. */
export function pieceSetting(piece: Piece, layout: Layout): string {
  const { units } = layout;
  if (piece.kind === 'throne') {
    return `seat ${showLength(layout.player.seatHeight, units)} high`;
  }
  if (piece.kind === 'pedal') return '';
  if (piece.kind === 'kick') {
    const rise = piece.rise === 0 ? '' : `, front raised ${Math.round(piece.rise)}°`;
    return `front head faces ${clockText(piece.turn + layout.deck.kit.turn)}${rise}`;
  }
  const what = 'depth' in piece && piece.kind !== 'percussion' ? 'head' : 'middle';
  const lean =
    piece.tilt === 0
      ? 'level'
      : `leaning ${Math.round(piece.tilt)}° ${towardWords(piece.tiltToward, layout)}`;
  const held =
    isStruck(piece) && piece.support.kind === 'held'
      ? `; held by ${nameOf(layout, piece.support.by)}`
      : '';
  return `${what} ${showLength(piece.z, units)} high, ${lean}${held}`;
}

/** The feet of a piece's own stand or legs: `a leg toward 2:00`; empty where there are none to turn. */
export function pieceFeet(piece: Piece, layout: Layout): string {
  if (piece.kind === 'throne') return `a leg ${towardWords(piece.turn, layout)}`;
  if (!isStruck(piece) || piece.support.kind === 'held') return '';
  const { support } = piece;
  const first =
    support.kind === 'stand' && support.legs === 2 ? 'the gap between the legs' : 'a leg';
  return `${first} ${towardWords(support.turn, layout)}`;
}

/** How a mic is set, part by part; what stands on the deck is measured apart. */
export function micSetting(
  mic: Mic,
  layout: Layout,
  { rig }: Pick<Report, 'rig'>,
): readonly string[] {
  const { mount } = mic;
  const long = (length: number): string => showLength(length, layout.units);
  switch (mount.kind) {
    case 'stand': {
      const stand = rig.mics.find((placed) => placed.mic.id === mic.id)?.stand;
      const feet = stand && stand.footprint.feet.length > 0;
      return [
        ...(feet ? [`a leg ${towardWords(mount.turn, layout)}`] : []),
        ...(stand
          ? [
              stand.boomLength > 0
                ? `clutch ${long(stand.clutch.z)} high, boom ${long(stand.boomLength)} to the mic${boomToward(stand, layout)}`
                : `clip ${long(stand.clutch.z)} high`,
            ]
          : []),
        `front of the mic ${long(mount.tip.z)} high`,
        aimWords(mount.azimuth, mount.pitch, layout),
      ];
    }
    case 'clip':
      return [
        `on ${nameOf(layout, mount.drum)}, at ${clockText(mount.angle + layout.deck.kit.turn)} of its rim`,
        mount.reach < 0
          ? `front of the mic ${long(-mount.reach)} outside the head`
          : `front of the mic ${long(mount.reach)} inside the rim`,
        `${long(mount.height)} over the head`,
        `pointing ${Math.round(mount.pitch)}° down to the middle`,
      ];
    case 'plateInKick':
      return [`in ${nameOf(layout, mount.kick)}, ${long(mount.depth)} behind its front head`];
    case 'plateOnDeck':
      return [`lying on the deck, facing ${clockText(mount.turn + layout.deck.kit.turn)}`];
  }
}

type PlacedStand = NonNullable<Report['rig']['mics'][number]['stand']>;

/** Which way a boom goes over the deck: `, toward 2:10`; empty where it goes straight up. */
function boomToward({ clutch, hold }: PlacedStand, layout: Layout): string {
  const [x, y] = [hold.x - clutch.x, hold.y - clutch.y];
  if (Math.hypot(x, y) < UPRIGHT) return '';
  return `, ${towardWords(toDegrees(Math.atan2(y, x)), layout)}`;
}

function aimWords(azimuth: number, pitch: number, layout: Layout): string {
  const steep = Math.round(Math.abs(pitch));
  if (steep === 90) return pitch < 0 ? 'pointing straight down' : 'pointing straight up';
  const across = `pointing ${towardWords(azimuth, layout)}`;
  if (steep === 0) return `${across}, level`;
  return `${across}, ${steep}° ${pitch < 0 ? 'down' : 'up'}`;
}

/** A number of a table, in the unit shown; empty for none. */
export const tableLength = (length: number | null, { units }: Pick<Layout, 'units'>): string =>
  length === null ? '' : showLengthNumber(length, units);
