import { z } from 'zod';
import { boxSchema, cablingSchema, stockSchema } from '../cabling.ts';
import { deckSchema, stairsSchema } from '../deck.ts';
import {
  azimuthField,
  heightField,
  idField,
  nameField,
  notesField,
  planCoordinate,
  pointField,
  spotField,
  tiltField,
} from '../fields.ts';
import { layoutSchema } from '../layout.ts';
import { micSchema } from '../mics/mic.ts';
import { micClassSchema } from '../mics/micClass.ts';
import { clipMount, plateInKick, plateOnDeck, standClassField, standMount } from '../mics/mount.ts';
import {
  channelLeg,
  channelSchema,
  checkResult,
  otherLeg,
  patchSchema,
  pullTick,
  spareRules,
  splitSchema,
} from '../patch.ts';
import { cymbalSchema } from '../pieces/cymbal.ts';
import { drumSchema, rimField } from '../pieces/drum.ts';
import { hiHatSchema } from '../pieces/hiHat.ts';
import { kickSchema, portField } from '../pieces/kick.ts';
import { pedalSchema } from '../pieces/pedal.ts';
import { percussionSchema } from '../pieces/percussion.ts';
import { handsField } from '../pieces/struck.ts';
import { heldSupport, legsSupport, standSupport } from '../pieces/support.ts';
import { throneSchema } from '../pieces/throne.ts';
import { bodyOverrides, hiHatField, playerSchema } from '../player.ts';
import { venueSchema } from '../venue.ts';

/**
 * The layout file as a JSON Schema (draft 2020-12), made from the one validator, with what each part means. What must
 * agree between parts (ids, references) is beyond a JSON Schema: it stands in `checkReferences`.
 */
export function layoutJsonSchema(): object {
  return {
    ...z.toJSONSchema(layoutSchema, { metadata: meanings() }),
    title: 'Strokespace layout',
  };
}

type Meanings = z.core.$ZodRegistry<{ description: string }>;

function meanings(): Meanings {
  const registry: Meanings = z.registry();
  const entries = [
    ...layoutMeanings,
    ...fieldMeanings,
    ...stageMeanings,
    ...playerMeanings,
    ...pieceMeanings,
    ...micMeanings,
    ...patchMeanings,
  ];
  for (const [schema, description] of entries) registry.add(schema, { description });
  return registry;
}

type Meaning = readonly [z.ZodType, string];

const layoutMeanings: readonly Meaning[] = [
  [
    layoutSchema,
    'One drum kit with its player, mics, box, deck and venue facts. Lengths in mm, angles in degrees. Kit frame: origin on the deck under the throne, x to the player’s right, y to the audience, z up. Deck frame: origin at the deck’s centre. Every id is used once; every reference names what is there; there is at most one throne.',
  ],
  [layoutSchema.shape.schema, 'Version of this format.'],
  [layoutSchema.shape.units, 'How lengths are shown; they are always stored in mm.'],
  [layoutSchema.shape.margin, 'Clearance below which a mic counts as tight, mm.'],
  [layoutSchema.shape.ownClasses, 'Mic classes of the user’s own, beside the built-in ones.'],
];

const fieldMeanings: readonly Meaning[] = [
  [idField, 'Names a thing inside one layout for ever.'],
  [nameField, 'A short label, shown as plain text.'],
  [notesField, 'Free notes, shown as plain text.'],
  [planCoordinate, 'A coordinate on the plan, mm; kit frame unless its part says otherwise.'],
  [heightField, 'A height above the deck, mm.'],
  [azimuthField, 'A direction on the plan, degrees: 0 = player’s right, 90 = audience.'],
  [tiltField, 'How far the playing surface leans from level, degrees.'],
  [spotField, 'A spot on the plan, kit frame, mm.'],
  [pointField, 'A point in space, kit frame, mm.'],
];

const stageMeanings: readonly Meaning[] = [
  [venueSchema, 'Where and when.'],
  [venueSchema.shape.temperature, 'Degrees Celsius; it sets the speed of sound.'],
  [venueSchema.shape.humidity, 'Relative humidity, percent.'],
  [deckSchema, 'The platform: width along x, depth along y, height above the stage floor.'],
  [
    deckSchema.shape.kit,
    'Where the kit frame’s origin stands in the deck frame, and how far it is turned anticlockwise.',
  ],
  [
    stairsSchema,
    'Stairs on an edge; offset from the edge’s middle toward the player’s right or the audience.',
  ],
  [boxSchema, 'The drum sub-box; deck frame. turn: the side its inputs face.'],
  [boxSchema.shape.tail, 'Length of the multicore to the stage box, mm.'],
  [cablingSchema.shape.loopAtMic, 'Service loop at the mic, mm.'],
  [cablingSchema.shape.loopAtBox, 'Service loop at the box, mm.'],
  [cablingSchema.shape.dressing, 'Allowance over the laid length, percent.'],
  [cablingSchema.shape.keepAway, 'Distance kept from what stands on the deck, mm.'],
  [stockSchema, 'Cables carried: how many of each length.'],
];

const playerMeanings: readonly Meaning[] = [
  [playerSchema.shape.stature, 'Body height, mm; other lengths follow from it.'],
  [bodyOverrides, 'Measured body lengths that replace those that follow from stature, mm.'],
  [playerSchema.shape.stick, 'The stick; butt: from its end to the middle of the grip, mm.'],
  [
    hiHatField,
    'Which hand plays a hi-hat that both may play: either, the lead hand alone (crossed), the one on its side alone (open).',
  ],
  [playerSchema.shape.strokeHeight, 'How far the contact point rises in a full stroke, mm.'],
  [playerSchema.shape.lean, 'How far the trunk leans at most to reach, mm.'],
];

const pieceMeanings: readonly Meaning[] = [
  [drumSchema, 'Snare or tom: x, y, z is the centre of the upper head.'],
  [rimField, 'The hoop: how far it stands above the head and outside the shell, mm.'],
  [kickSchema, 'Kick drum: x, y, z is the shell’s centre, turn the way its front head faces.'],
  [kickSchema.shape.rise, 'How far the front is lifted, degrees.'],
  [kickSchema.shape.spurs, 'How far each spur’s foot stands outside the shell, mm.'],
  [portField, 'The port cut into the front head: its centre as the audience sees it, mm.'],
  [hiHatSchema, 'Hi-hat: x, y, z is the centre of the closed top cymbal’s edge plane.'],
  [cymbalSchema, 'Cymbal: x, y, z is the centre of its edge plane.'],
  [percussionSchema, 'Cowbell, block or other small percussion: a struck spot on a body.'],
  [pedalSchema, 'Pedal: x, y is where the heel rests, turn the way from heel to toe.'],
  [throneSchema, 'The seat: its centre is the origin of the kit frame.'],
  [handsField, 'Which hands play the piece; lead follows the player’s lead hand.'],
  [standSupport, 'A stand: its hub at dx, dy from the piece, feet at spread from the hub.'],
  [legsSupport, 'Three legs on the shell, feet at overhang outside it.'],
  [heldSupport, 'Carried by another piece’s hardware.'],
];

const micMeanings: readonly Meaning[] = [
  [micSchema.shape.micClass, 'A built-in class or one of the layout’s own.'],
  [micSchema.shape.hears, 'Pieces it must hear, its own source first.'],
  [micSchema.shape.input, 'Input of the box; null: not plugged.'],
  [micClassSchema, 'A generic class of microphone: a cylinder from the tip backward, mm and kg.'],
  [micClassSchema.shape.patternA, 'A of the first-order pattern A + B cos(angle), A + B = 1.'],
  [
    clipMount,
    'On a drum’s hoop: angle round the rim, tip reach inside the rim and height above the head, axis pitch below the head’s plane.',
  ],
  [standMount, 'On a stand: base and tip are kept, mast and boom follow.'],
  [standClassField, 'Class of mic stand.'],
  [plateInKick, 'A boundary plate in a kick, depth behind its front head, mm.'],
  [plateOnDeck, 'A boundary plate on the deck, kit frame, facing turn.'],
];

const patchMeanings: readonly Meaning[] = [
  [patchSchema, 'Input list, splits, pull list and line check, as far as they are set by hand.'],
  [patchSchema.shape.order, 'Ids of channels in the order set by hand; null: festival order.'],
  [
    channelSchema,
    'One channel; null: as usual. The first channel of a mic has the mic’s id. highPass in Hz (0: none), pad in dB.',
  ],
  [splitSchema, 'One signal to several places, over a transformer or a plain Y; of: its mic.'],
  [channelLeg, 'To the mic’s own channel; lifted: pin 1 is open; impedance in ohms.'],
  [otherLeg, 'To another place; phantom: whether that end gives 48 V.'],
  [patchSchema.shape.micImpedance, 'Source impedance of the mics, ohms.'],
  [spareRules, 'Spares of what is needed: a share in percent, and at least so many of each sort.'],
  [pullTick, 'How many of a sort were carried out to the stage, and how many came back.'],
  [checkResult, 'What came of checking one channel, and what was checked.'],
];
