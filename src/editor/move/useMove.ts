import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import { createFigures } from '../../report/figure.ts';
import type { Moment } from '../../report/moment.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { type OpenLayout, useSession } from '../../session/session.ts';
import { focusAt, focusOn, type MicFocus } from './micFocus.ts';
import { playedFrom, stepFrom } from './playing.ts';

/** The move or the swing that comes nearest to the selected mic, to be looked at moment by moment. */
export interface ShownMove {
  readonly mic: Id;
  /** The moment that is shown, 0 to 1. */
  readonly at: number;
  readonly nearestAt: number;
  readonly moment: Moment;
  readonly isPlaying: boolean;
  /** Shows a moment, and stops. */
  show(at: number): void;
  play(isPlaying: boolean): void;
  /** Shows the next moment of a few (P3). */
  step(): void;
}

/** What is asked to be shown of one move; another move starts at its nearest moment, at rest. */
interface Asked {
  readonly key: string;
  /** Null: the nearest moment. */
  readonly at: number | null;
  readonly isPlaying: boolean;
}

/** What the selected mic is judged by, null when no mic is selected, and what of it can be played; null for a leg, which is at rest. */
export function useMove(open: OpenLayout): {
  readonly focus: MicFocus | null;
  readonly move: ShownMove | null;
} {
  const { layout, report } = open;
  const selection = useSession((state) => state.selection);
  const isAtRest = useSession((state) => state.gesture === null);
  const mic = selection?.kind === 'mic' ? selection.id : null;
  const row = report.clearances.find((one) => one.mic === mic);
  const key = keyOf(row);
  const [figureIn] = useState(createFigures);
  const figure = figureIn(layout);
  const [asked, setAsked] = useState<Asked>({ key, at: null, isPlaying: false });
  const kept = asked.key === key ? asked : { key, at: null, isPlaying: false };
  if (kept !== asked) setAsked(kept);
  const still = useMemo(
    () => (mic === null ? null : focusOn(open, mic, figure)),
    [open, mic, figure],
  );
  const nearestAt = still?.nearestAt ?? null;
  const at = kept.at ?? nearestAt;
  const found = useMemo(
    () => (still && row && at !== null ? focusAt(still, open, row, at) : null),
    [still, open, row, at],
  );
  const isPlaying = kept.isPlaying && isAtRest;
  usePlaying(isPlaying, { from: at ?? 0, nearestAt: nearestAt ?? 0 }, setAsked);
  const show = useCallback((next: number) => setAsked({ key, at: next, isPlaying: false }), [key]);
  const play = useCallback((on: boolean) => setAsked((now) => ({ ...now, isPlaying: on })), []);
  const move =
    found && mic !== null && at !== null && nearestAt !== null
      ? {
          ...{ mic, at, nearestAt, moment: found.moment, isPlaying, show, play },
          step: () => show(stepFrom(at, nearestAt)),
        }
      : null;
  return { focus: found?.focus ?? still, move };
}

const keyOf = (row: ClearanceRow | undefined): string =>
  JSON.stringify([row?.mic, { ...row?.nearest?.movement, at: 0 }]);

interface Way {
  readonly from: number;
  readonly nearestAt: number;
}

/** Goes on from moment to moment while it is played, until it is nearest (P1, P2). */
function usePlaying(
  isPlaying: boolean,
  { from, nearestAt }: Way,
  setAsked: (next: (now: Asked) => Asked) => void,
): void {
  // Where it starts is read once: the moments that follow are this effect's own.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    if (!isPlaying) return undefined;
    let ticket = 0;
    let began: number | undefined;
    const draw = (time: number): void => {
      began ??= time;
      const played = playedFrom(from, nearestAt, time - began);
      setAsked((now) => (now.isPlaying ? { ...now, ...played } : now));
      if (played.isPlaying) ticket = requestAnimationFrame(draw);
    };
    ticket = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(ticket);
  }, [isPlaying, nearestAt]);
}
