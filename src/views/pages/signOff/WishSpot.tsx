import type { Id } from '../../../layout/fields.ts';
import { type Spot, say } from '../../../session/signing.ts';
import { showLength } from '../../../units/lengthText.ts';
import { useOpen } from '../../parts/useOpen.ts';

interface WishSpotProps {
  readonly mic: Id;
  readonly wish: Spot | null;
}

/** A step of the arrows, mm. */
const STEP = 20;

const ways = [
  { text: 'Left', by: { x: -STEP, y: 0 } },
  { text: 'Right', by: { x: STEP, y: 0 } },
  { text: 'Away', by: { x: 0, y: STEP } },
  { text: 'Nearer', by: { x: 0, y: -STEP } },
] as const;

/** Where the mic should be instead: by finger on the plan, or step by step. Seen from the player's seat. */
export function WishSpot({ mic, wish }: WishSpotProps) {
  const { layout, report } = useOpen();
  const tip = report.rig.mics.find((placed) => placed.mic.id === mic)?.tip;
  if (!tip) return null;
  const from = wish ?? { x: Math.round(tip.x), y: Math.round(tip.y) };
  const far = Math.hypot(from.x - tip.x, from.y - tip.y);
  return (
    <fieldset className="wish-spot">
      <legend>Point at the better spot on the plan, or step by step:</legend>
      <div className="buttons">
        {ways.map(({ text, by }) => (
          <button
            key={text}
            type="button"
            aria-label={`${text} by ${showLength(STEP, layout.units)}`}
            onClick={() =>
              say({ about: 'mic', mic }, { wish: { x: from.x + by.x, y: from.y + by.y } })
            }
          >
            {text}
          </button>
        ))}
      </div>
      <p role="status">
        {wish === null ? 'No spot yet.' : `${showLength(far, layout.units)} from where it is.`}
      </p>
    </fieldset>
  );
}
