import { memo, useId } from 'react';
import { type Drawing, prefer, useSession } from '../session/session.ts';
import { drawingWords } from './words.ts';

const one: readonly Drawing[] = ['plan', 'front', 'side'];
const two: readonly Drawing[] = ['planAndFront', 'planAndSide'];

/** What is drawn: the plan, an elevation, or both where there is room. */
export const ViewChoice = memo(function ViewChoice({
  roomForTwo,
}: {
  readonly roomForTwo: boolean;
}) {
  const drawing = useSession((state) => state.preferences.drawing);
  const seenFrom = useSession((state) => state.preferences.seenFrom);
  const words = drawingWords(seenFrom);
  const group = useId();
  const choices = roomForTwo ? [...one, ...two] : one;
  const chosen = choices.includes(drawing) ? drawing : 'plan';
  return (
    <fieldset className="plan-views">
      <legend className="plan-spoken">Drawing</legend>
      {choices.map((choice) => (
        <label key={choice}>
          <input
            type="radio"
            name={group}
            checked={choice === chosen}
            onChange={() => prefer({ drawing: choice })}
          />
          {words[choice]}
        </label>
      ))}
    </fieldset>
  );
});
