import { type OverheadSound, type OverheadStart, overheadStart } from '../../../report/sound.ts';
import { edit } from '../../../session/session.ts';
import { showLength } from '../../../units/lengthText.ts';
import type { Mm } from '../../../units/quantity.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { STARTS, startWords } from '../words/overheadWords.ts';
import { outermost, placeOverhead } from './moveOverheads.ts';

interface StartsProps {
  readonly overheads: OverheadSound;
  readonly height: Mm;
}

/** Usual arrangements of two overheads, one tap each. */
export function Starts({ overheads, height }: StartsProps) {
  const { layout } = useOpen();
  const pair = outermost(
    layout,
    overheads.mics.map(({ mic }) => mic),
  );
  if (!pair) return <p className="soft">Arrangements need two overheads on stands.</p>;
  return (
    <div className="sound-block">
      <h4>Start from an arrangement</h4>
      <ul className="sound-starts">
        {STARTS.map((start) => (
          <StartButton key={start} start={start} height={height} pair={pair} />
        ))}
      </ul>
      <p className="soft small">
        Mics and stands move at this height. Look at the plan for what they come near; undo brings
        them back.
      </p>
    </div>
  );
}

interface StartButtonProps {
  readonly start: OverheadStart;
  readonly height: Mm;
  readonly pair: readonly [left: string, right: string];
}

function StartButton({ start, height, pair }: StartButtonProps) {
  const { layout } = useOpen();
  const spots = overheadStart(start, layout, height);
  if (!spots) return null;
  const { name, what } = startWords(start);
  const apply = () =>
    edit(`${name} overheads`, (now) =>
      placeOverhead(placeOverhead(now, pair[0], spots[0]), pair[1], spots[1]),
    );
  const snare = spots.map(({ toSnare }) => toSnare).filter((length) => length !== null);
  return (
    <li>
      <button type="button" onClick={apply}>
        {name}
      </button>
      <span className="small soft">
        {what}
        {snare.length > 0 &&
          `; to the snare ${snare.map((length) => showLength(length, layout.units)).join(' and ')}`}
      </span>
    </li>
  );
}
