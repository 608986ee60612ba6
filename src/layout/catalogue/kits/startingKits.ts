import { mirrorKit } from '../../edit/mirror.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import { usualThrone } from '../defaults/usualPieces.ts';
import { demo } from './demo.ts';
import { fivePieceOneRack } from './fivePieceOneRack.ts';
import { fivePieceTwoRacks } from './fivePieceTwoRacks.ts';
import { fourPieceJazz } from './fourPieceJazz.ts';
import { largeKit } from './largeKit.ts';
import { squareRiser, startingKit } from './startingKit.ts';

/** A layout to start from. `make` gives it the id under which it will be kept. */
export interface StartingKit {
  readonly key: Id;
  readonly name: string;
  readonly about: string;
  make(id: Id): Layout;
}

const leftHanded = (id: Id): Layout => ({
  ...mirrorKit(fivePieceOneRack(id)),
  name: 'Left-handed five-piece',
});

const emptyDeck = (id: Id): Layout =>
  startingKit({
    id,
    name: 'Empty deck',
    deck: squareRiser,
    pieces: [usualThrone('throne')],
    mics: [],
    box: { x: -1130, y: 500, turn: 0, inputs: 12, tail: 15_000 },
  });

/** Every layout a new one can start from, in the order in which they are offered. */
export const STARTING_KITS: readonly StartingKit[] = [
  {
    key: 'four-piece-jazz',
    name: 'Four-piece jazz',
    about: 'Small kick without a port, one rack tom, one floor tom, two cymbals, 6 mics',
    make: fourPieceJazz,
  },
  {
    key: 'five-piece-one-rack',
    name: 'Five-piece, one rack tom',
    about: 'One rack tom, two floor toms, three cymbals, 8 mics',
    make: fivePieceOneRack,
  },
  {
    key: 'five-piece-two-racks',
    name: 'Five-piece, two rack toms',
    about: 'Two rack toms, one floor tom, three cymbals, 9 mics',
    make: fivePieceTwoRacks,
  },
  {
    key: 'large-kit',
    name: 'Large kit',
    about: 'Eight drums, seven cymbals, 16 mics',
    make: largeKit,
  },
  {
    key: 'left-handed',
    name: 'Left-handed five-piece',
    about: 'The five-piece with one rack tom, mirrored, left hand leading',
    make: leftHanded,
  },
  {
    key: 'empty-deck',
    name: 'Empty deck',
    about: 'A riser with a throne and nothing else',
    make: emptyDeck,
  },
  {
    key: 'demo',
    name: 'Demo: Saltworks Hall',
    about: 'An invented evening: the five-piece with a cowbell and venue facts',
    make: demo,
  },
];
