import { type Preferences, prefer, useSession } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';

type Shown = 'showSweeps' | 'showRuns' | 'showZone' | 'showFloor';

const shown: readonly { readonly key: Shown; readonly text: string }[] = [
  { key: 'showSweeps', text: 'Paths' },
  { key: 'showRuns', text: 'Cables' },
  { key: 'showZone', text: 'Struck zone' },
  { key: 'showFloor', text: 'Stick floor' },
];

/** What is drawn on the plan alone, not on an elevation. */
const onPlanAlone: readonly Shown[] = ['showZone', 'showFloor'];

/** How the plan is seen and what is drawn on it. */
export function PlanBar() {
  const preferences = useSession((state) => state.preferences);
  return (
    <div className="plan-bar">
      <Choice
        label="Seen from"
        value={preferences.seenFrom}
        options={[
          { value: 'house', text: 'Audience' },
          { value: 'player', text: 'Player' },
        ]}
        onChoose={(seenFrom) => prefer({ seenFrom })}
      />
      <fieldset className="plan-toggles">
        <legend className="spoken">Shown on the plan</legend>
        {shown.map(({ key, text }) => (
          <ShowToggle key={key} name={key} text={text} preferences={preferences} />
        ))}
      </fieldset>
    </div>
  );
}

interface ShowToggleProps {
  readonly name: Shown;
  readonly text: string;
  readonly preferences: Preferences;
}

function ShowToggle({ name, text, preferences }: ShowToggleProps) {
  const { drawing } = preferences;
  const hasPlan = drawing !== 'front' && drawing !== 'side';
  return (
    <label className="check">
      <input
        type="checkbox"
        checked={preferences[name]}
        disabled={!hasPlan && onPlanAlone.includes(name)}
        onChange={(event) => prefer({ [name]: event.target.checked })}
      />
      {text}
    </label>
  );
}
