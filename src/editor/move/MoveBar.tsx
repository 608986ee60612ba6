import { type CSSProperties, useCallback, useState, useSyncExternalStore } from 'react';
import type { Judged } from '../../units/clearanceText.ts';
import { Sign } from '../Sign.tsx';
import { atNearest, moveWords, spokenMoment, swingWords } from '../words.ts';
import type { ShownMove } from './useMove.ts';

interface Props {
  readonly move: ShownMove;
  /** The margin that judges it, and the unit in which it is told. */
  readonly judged: Judged;
  readonly isOpen: boolean;
  open(isOpen: boolean): void;
}

/** Steps of the slider over the whole move: an arrow key is one of them. */
const STEPS = 200;

/** The move or the swing that comes nearest to the selected mic: played, stopped and drawn to and fro by finger or keys. */
export function MoveBar({ move, judged, isOpen, open }: Props) {
  const still = useReducedMotion();
  const { at, nearestAt, isPlaying, moment } = move;
  const words = moment.cymbal ? swingWords : moveWords;
  if (!isOpen) {
    return (
      <button type="button" className="plan-open" onClick={() => open(true)}>
        <Sign path={signs.play} />
        {words.show}
      </button>
    );
  }
  const text = spokenMoment(moment, judged);
  const isNearest = at === nearestAt;
  const close = (): void => {
    move.show(nearestAt);
    open(false);
  };
  return (
    <fieldset className="plan-card plan-move">
      <legend className="plan-spoken">{words.name}</legend>
      {still ? (
        <button type="button" aria-label={words.step} onClick={move.step}>
          <Sign path={signs.step} />
        </button>
      ) : (
        <button
          type="button"
          aria-label={isPlaying ? 'Pause' : 'Play'}
          onClick={() => move.play(!isPlaying)}
        >
          <Sign path={isPlaying ? signs.pause : signs.play} />
        </button>
      )}
      <span className="plan-slider" style={nearestMark(nearestAt)}>
        <input
          type="range"
          aria-label={words.moment}
          aria-valuetext={text}
          min={0}
          max={STEPS}
          step={1}
          value={Math.round(at * STEPS)}
          onChange={(event) => move.show(Number(event.target.value) / STEPS)}
        />
      </span>
      <output className={`plan-moment plan-${moment.verdict}`}>
        {isNearest ? atNearest(text) : text}
      </output>
      <button type="button" disabled={isNearest} onClick={() => move.show(nearestAt)}>
        Nearest
      </button>
      <button type="button" aria-label={words.close} onClick={close}>
        <Sign path={signs.close} />
      </button>
    </fieldset>
  );
}

const signs = {
  play: 'M8 5v14l11-7z',
  step: 'M7 5v14l8-7zM18 5v14',
  pause: 'M8 5v14M16 5v14',
  close: 'M6 6l12 12M18 6L6 18',
} as const;

/** Where on the slider the nearest moment lies, for its mark. */
const nearestMark = (at: number): CSSProperties => ({ '--plan-nearest': at }) as CSSProperties;

function useReducedMotion(): boolean {
  // One query for all frames: making one costs more than asking it.
  const [query] = useState(() => matchMedia('(prefers-reduced-motion: reduce)'));
  const subscribe = useCallback(
    (changed: () => void) => {
      query.addEventListener('change', changed);
      return () => query.removeEventListener('change', changed);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => query.matches);
}
