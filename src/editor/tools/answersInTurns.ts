import { type Frames, lastPerFrame } from './lastPerFrame.ts';

/** What a drag does to the session. */
export interface Previews<T> {
  /** Shows a value with all its answers. */
  answer(value: T): void;
  /** Shows only where things are then. */
  place(value: T): void;
}

export interface AnswersInTurns<T> {
  push(value: T): void;
  /** Places at once what is waiting: the drag ends, and what is answered is answered at rest. */
  finish(): void;
  /** Forgets what is waiting. */
  drop(): void;
}

/**
 * A drag is drawn in every frame and answered in every second one: the screen takes over the answers while the next ones need not be computed,
 * so that no frame holds both.
 *
 * D1. In every frame the last value that came is shown.
 * D2. A frame that answers is followed by one that only places; the next one answers, with the last value, even when no new one came. So answers
 *     are at most one frame behind what is drawn, and never behind what stays.
 */
export function answersInTurns<T>(previews: Previews<T>, frames: Frames): AnswersInTurns<T> {
  let isAnswered = false;
  const line = lastPerFrame((value: T) => {
    isAnswered = !isAnswered;
    if (isAnswered) previews.answer(value);
    else {
      previews.place(value);
      line.push(value);
    }
  }, frames);
  const finishing = (value: T): void => previews.place(value);
  return {
    push: line.push,
    finish() {
      line.flush(finishing);
      isAnswered = false;
    },
    drop() {
      line.drop();
      isAnswered = false;
    },
  };
}
