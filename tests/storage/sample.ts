import { type Layout, SCHEMA_VERSION } from '../../src/layout/layout.ts';
import { DEFAULT_PATCH } from '../../src/layout/patch.ts';

/** A small layout that passes every check. */
export const sample = (id: string, name = 'Small club'): Layout => ({
  schema: SCHEMA_VERSION,
  id,
  name,
  venue: { name: 'Cellar', date: null, temperature: 20, humidity: 50, notes: '' },
  units: 'mm',
  margin: 50,
  deck: {
    width: 2400,
    depth: 2000,
    height: 0,
    kit: { x: 0, y: 0, turn: 0 },
    stairs: [],
  },
  player: {
    name: 'Drummer',
    stature: 1750,
    seatHeight: 500,
    leadHand: 'right',
    hiHat: 'either',
    body: {},
    stick: { length: 406, diameter: 14.5, butt: 110 },
    strokeHeight: 305,
    lean: 200,
  },
  pieces: [
    { kind: 'throne', id: 'throne', name: 'Throne', diameter: 330, legs: 3, spread: 300, turn: 0 },
  ],
  ownClasses: [],
  mics: [],
  box: { x: 1000, y: 800, turn: 0, inputs: 12, tail: 15_000 },
  cabling: {
    loopAtMic: 300,
    loopAtBox: 300,
    dressing: 10,
    keepAway: 30,
    neatness: 0,
    stock: [],
  },
  patch: DEFAULT_PATCH,
  origin: null,
  signOffs: [],
  setUp: { done: [] },
});
