import { VerdictTally } from '../sections/VerdictTally.tsx';
import { MarginField } from '../stage/MarginField.tsx';
import { BodyFields } from './BodyFields.tsx';
import { HandsFields } from './HandsFields.tsx';
import { OtherPlayers } from './OtherPlayers.tsx';
import { PersonFields } from './PersonFields.tsx';
import { StrokeFields } from './StrokeFields.tsx';

/** The player, the stick and how far it is raised: what every clearance is computed from, with what it makes of the mics on top, always in view. */
export function PlayerFields() {
  return (
    <>
      <div className="tally-kept">
        <VerdictTally />
      </div>
      <PersonFields />
      <HandsFields />
      <StrokeFields />
      <MarginField />
      <BodyFields />
      <OtherPlayers />
    </>
  );
}
