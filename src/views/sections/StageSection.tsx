import { BoxFields } from '../stage/BoxFields.tsx';
import { DeckFields } from '../stage/DeckFields.tsx';
import { MarginField } from '../stage/MarginField.tsx';
import { VenueFields } from '../stage/VenueFields.tsx';

/** Where the kit stands, and where that is. */
export function StageSection() {
  return (
    <>
      <h2 className="spoken">Stage</h2>
      <MarginField />
      <DeckFields />
      <BoxFields />
      <VenueFields />
    </>
  );
}
