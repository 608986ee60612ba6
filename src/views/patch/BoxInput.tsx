import { colourBands } from '../../units/colourCode.ts';

interface BoxInputProps {
  readonly input: number | null;
  /** Where nothing else says whose number it is: among other numbers, as a channel's. */
  readonly named?: boolean;
}

/** A number of the box with the colour of each digit by IEC 60062; the digit is always printed. */
export function BoxInput({ input, named = false }: BoxInputProps) {
  const name = named && (
    <span className="number-name" aria-hidden="true">
      Box
    </span>
  );
  if (input === null) {
    return (
      <span className="box-input">
        {name}
        <span className="spoken">Not plugged</span>
        <span className="box-digit" aria-hidden="true">
          –
        </span>
      </span>
    );
  }
  // The same digit can stand in both places.
  const bands = colourBands(input).map((band, place) => ({ ...band, place }));
  return (
    <span className="box-input">
      {name}
      <span className="spoken">
        Box input {input}, {bands.map(({ colour }) => colour).join(' ')}
      </span>
      <span className="box-digits" aria-hidden="true">
        {bands.map(({ digit, colour, place }) => (
          <span key={place} className={`box-digit band-${colour}`}>
            {digit}
          </span>
        ))}
      </span>
    </span>
  );
}
