import { colourBands } from '../../units/colourCode.ts';

/** A number of the box with the colour of each digit by IEC 60062; the digit is always printed. */
export function BoxInput({ input }: { readonly input: number | null }) {
  if (input === null) {
    return (
      <span className="box-input">
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
