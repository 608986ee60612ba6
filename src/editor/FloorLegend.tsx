import { memo, useId, useState } from 'react';
import type { LengthUnit } from '../units/lengthText.ts';
import { Sign } from './Sign.tsx';
import { floorText, floorTrust } from './words.ts';

/** What the contours mean: in one line how far they can be trusted, the rest by a tap, so that the plan is not covered by it. */
export const FloorLegend = memo(function FloorLegend({ unit }: { readonly unit: LengthUnit }) {
  const [shown, setShown] = useState(false);
  const more = useId();
  return (
    <div className="plan-legend">
      <button
        type="button"
        aria-expanded={shown}
        aria-controls={shown ? more : undefined}
        onClick={() => setShown(!shown)}
      >
        <span className="plan-contour" aria-hidden="true" />
        {floorTrust(unit)}
        <Sign path={shown ? 'M6 15l6-6 6 6' : 'M6 9l6 6 6-6'} />
      </button>
      {shown && <p id={more}>{floorText(unit)}</p>}
    </div>
  );
});
