import { stockSchema } from '../../../layout/cabling.ts';
import { carriedOf, offeredLengths } from '../../../layout/catalogue/cableLengths.ts';
import { deckSchema, type Stairs } from '../../../layout/deck.ts';
import type { Id } from '../../../layout/fields.ts';
import type { Layout } from '../../../layout/layout.ts';
import { venueSchema } from '../../../layout/venue.ts';
import type { Edge, NextVenue } from '../../../report/nextVenue.ts';
import { CELSIUS, COARSE_LENGTH, COUNT, type Measure, PERCENT } from '../../fields/measure.ts';
import { type Limits, limitsOf, readField } from '../../fields/reading.ts';
import { tooLong } from '../../fields/TextField.tsx';

/** The numbers of the form, as they are typed. */
export type NumberKey = 'width' | 'depth' | 'height' | 'temperature' | 'humidity';

export interface VenueForm {
  readonly name: string;
  readonly venueName: string;
  readonly date: string | null;
  readonly numbers: Readonly<Record<NumberKey, string>>;
  readonly stairs: readonly Stairs[];
  readonly boxEdge: Edge | null;
  /** By length in mm, as text: how many are carried. */
  readonly stock: Readonly<Record<string, string>>;
}

export interface NumberEntry {
  readonly label: string;
  readonly measure: Measure;
  readonly limits: Limits;
}

export const formNumbers: Readonly<Record<NumberKey, NumberEntry>> = {
  width: {
    label: 'Deck width',
    measure: COARSE_LENGTH,
    limits: limitsOf(deckSchema.shape.width),
  },
  depth: {
    label: 'Deck depth',
    measure: COARSE_LENGTH,
    limits: limitsOf(deckSchema.shape.depth),
  },
  height: {
    label: 'Deck height',
    measure: COARSE_LENGTH,
    limits: limitsOf(deckSchema.shape.height),
  },
  temperature: {
    label: 'Temperature',
    measure: CELSIUS,
    limits: limitsOf(venueSchema.shape.temperature),
  },
  humidity: {
    label: 'Humidity',
    measure: PERCENT,
    limits: limitsOf(venueSchema.shape.humidity),
  },
};

const count: NumberEntry = {
  label: 'Cables',
  measure: COUNT,
  limits: limitsOf(stockSchema.element.shape.count),
};

/** The form as it opens: everything as at the last venue but its name and day. */
export const formOf = ({ name, venue, deck, cabling, units }: Layout): VenueForm => ({
  name,
  venueName: '',
  date: null,
  numbers: {
    width: COARSE_LENGTH.show(deck.width, units),
    depth: COARSE_LENGTH.show(deck.depth, units),
    height: COARSE_LENGTH.show(deck.height, units),
    temperature: CELSIUS.show(venue.temperature, units),
    humidity: PERCENT.show(venue.humidity, units),
  },
  stairs: deck.stairs,
  boxEdge: null,
  stock: Object.fromEntries(
    offeredLengths({ units, cabling }).map((length) => [
      String(length),
      String(carriedOf({ cabling }, length)),
    ]),
  ),
});

/** As long as a layout's or a venue's name may be. */
export const MOST_NAME = 80;

export type FormReading =
  | { readonly ok: true; readonly next: NextVenue }
  | { readonly ok: false; readonly problems: Readonly<Record<string, string>> };

/** The form read, or what is wrong with it by field: a number's key, `name`, `venueName`, or `stock:LENGTH`. */
export function readForm(form: VenueForm, layout: Layout, id: Id): FormReading {
  const problems: Record<string, string> = {};
  const read = (
    key: string,
    text: string,
    { measure, limits }: NumberEntry,
    now: number,
  ): number => {
    // A value that was not typed over is kept exactly: inches on the screen are rounded.
    if (text === measure.show(now, layout.units)) return now;
    const reading = readField(text, measure, limits, layout.units);
    if (reading.ok) return reading.value;
    problems[key] = reading.message;
    return now;
  };
  const { deck, venue } = layout;
  const number = (key: NumberKey, now: number) =>
    read(key, form.numbers[key], formNumbers[key], now);
  const name = form.name.trim();
  const venueName = form.venueName.trim();
  if (name === '') problems['name'] = `A name is needed: 1 to ${MOST_NAME} characters.`;
  if (name.length > MOST_NAME) problems['name'] = tooLong(name, MOST_NAME);
  if (venueName.length > MOST_NAME) problems['venueName'] = tooLong(venueName, MOST_NAME);
  const next: NextVenue = {
    id,
    name,
    venue: {
      name: venueName,
      date: form.date,
      temperature: number('temperature', venue.temperature),
      humidity: number('humidity', venue.humidity),
    },
    deck: {
      width: number('width', deck.width),
      depth: number('depth', deck.depth),
      height: number('height', deck.height),
      stairs: [...form.stairs],
    },
    boxEdge: form.boxEdge,
    stock: offeredLengths(layout)
      .map((length) => {
        const now = carriedOf(layout, length);
        const text = form.stock[String(length)] ?? '';
        return { length, count: read(`stock:${length}`, text, count, now) };
      })
      .filter((row) => row.count > 0),
  };
  return Object.keys(problems).length > 0 ? { ok: false, problems } : { ok: true, next };
}
