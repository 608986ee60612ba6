import type { Stock } from '../../cabling.ts';
import type { Deck } from '../../deck.ts';
import type { Id } from '../../fields.ts';
import { type Layout, SCHEMA_VERSION } from '../../layout.ts';
import type { Mic } from '../../mics/mic.ts';
import type { ClipMount, Mount, StandClass, StandMount } from '../../mics/mount.ts';
import { DEFAULT_PATCH } from '../../patch.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Player } from '../../player.ts';
import type { BuiltInMicClassId } from '../micClasses.ts';

/** What the starting kits share, so that each file shows only its own pieces and mics. */

/** A player of average stature (design, section 4) with a usual stick. */
const averagePlayer: Player = {
  name: 'Drummer',
  stature: 1750,
  seatHeight: 500,
  leadHand: 'right',
  hiHat: 'either',
  body: {},
  stick: { length: 406, diameter: 14.5, butt: 110 },
  strokeHeight: 305,
  lean: 200,
};

/** Metric mic cables as they are usually carried (common practice, from memory). */
const metricStock: Stock = [
  { length: 2000, count: 4 },
  { length: 3000, count: 6 },
  { length: 5000, count: 10 },
  { length: 7500, count: 4 },
  { length: 10_000, count: 6 },
  { length: 15_000, count: 2 },
];

/** A riser of four 4 x 4 ft modules with stairs behind the throne. */
export const squareRiser: Deck = {
  width: 2440,
  depth: 2440,
  height: 300,
  kit: { x: -60, y: -720, turn: 0 },
  stairs: [{ edge: 'back', offset: -60, width: 700 }],
};

/** A riser of 12 x 8 ft with stairs behind the throne. */
export const wideRiser: Deck = {
  width: 3660,
  depth: 2440,
  height: 300,
  kit: { x: -100, y: -720, turn: 0 },
  stairs: [{ edge: 'back', offset: -100, width: 900 }],
};

/** A riser of 12 x 10 ft with stairs behind the throne. */
export const largeRiser: Deck = {
  width: 3660,
  depth: 3050,
  height: 600,
  kit: { x: -100, y: -930, turn: 0 },
  stairs: [{ edge: 'back', offset: -100, width: 900 }],
};

export type KitParts = Pick<Layout, 'id' | 'name' | 'pieces' | 'mics' | 'deck' | 'box'>;

/** A whole layout from the parts in which starting kits differ. */
export const startingKit = (parts: KitParts): Layout => ({
  schema: SCHEMA_VERSION,
  id: parts.id,
  name: parts.name,
  venue: { name: '', date: null, temperature: 20, humidity: 50, notes: '' },
  units: 'mm',
  margin: 50,
  deck: parts.deck,
  player: averagePlayer,
  pieces: parts.pieces,
  ownClasses: [],
  mics: numbered(parts.mics),
  box: parts.box,
  cabling: {
    loopAtMic: 500,
    loopAtBox: 500,
    dressing: 5,
    keepAway: 50,
    neatness: 0.5,
    stock: metricStock,
  },
  patch: DEFAULT_PATCH,
  origin: null,
  signOffs: [],
  setUp: { done: [] },
});

/** Mics plugged into the box in the order in which they are listed. */
const numbered = (mics: readonly Mic[]): Mic[] =>
  mics.map((mic, index) => ({ ...mic, input: index + 1 }));

/** A mic with an id made of its name: `Kick in` is `mic-kick-in`. */
export const mic = (
  micClass: BuiltInMicClassId,
  name: string,
  hears: readonly Piece[],
  mount: Mount,
): Mic => ({
  id: `mic-${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`,
  name,
  micClass,
  hears: hears.map((piece) => piece.id),
  mount,
  input: null,
});

/** A rubber rim clip: the mic looks over the rim at `angle` round the drum. */
export const rimClip = (drum: Id, angle: number): ClipMount => ({
  kind: 'clip',
  drum,
  material: 'rubber',
  angle,
  reach: 30,
  height: 45,
  pitch: 35,
});

/** A mic on a stand: where its base stands, which way its first leg points, where the tip is and where it looks. */
export const onMicStand = (
  stand: StandClass,
  [baseX, baseY, turn]: readonly [number, number, number],
  [x, y, z]: readonly [number, number, number],
  [azimuth, pitch]: readonly [number, number],
): StandMount => ({
  kind: 'stand',
  stand,
  base: { x: baseX, y: baseY },
  turn,
  mast: null,
  tip: { x, y, z },
  azimuth,
  pitch,
});
