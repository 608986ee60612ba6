/** The colours of the digits 0 to 9 by IEC 60062, by name. */
export type BandColour =
  | 'black'
  | 'brown'
  | 'red'
  | 'orange'
  | 'yellow'
  | 'green'
  | 'blue'
  | 'violet'
  | 'grey'
  | 'white';

const COLOURS: readonly BandColour[] = [
  'black',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
  'grey',
  'white',
];

/** One band: the digit is always printed beside its colour, so that colour is never the only sign. */
export interface Band {
  readonly digit: number;
  readonly colour: BandColour;
}

/**
 * The bands of a channel or input number, first digit first: 7 is violet, 12 is brown, red. More digits than one as so many
 * bands is common practice, from memory.
 *
 * @throws RangeError for what is no whole number from 0 on.
 */
export function colourBands(number: number): readonly Band[] {
  if (!Number.isSafeInteger(number) || number < 0) {
    throw new RangeError(`Expected a whole number from 0 on, not ${number}`);
  }
  return [...String(number)].flatMap((text) => {
    const colour = COLOURS[Number(text)];
    return colour === undefined ? [] : [{ digit: Number(text), colour }];
  });
}
