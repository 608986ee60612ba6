import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Layout } from '../layout/layout.ts';
import type { Selection } from '../session/selection.ts';
import { session, useSession } from '../session/session.ts';
import type { View } from './view/view.ts';
import { TAKEN_BACK } from './words.ts';

/** What the last tap can mean, with what was selected by it and in which layout. */
interface Tapped {
  readonly things: readonly Selection[];
  readonly selection: Selection | null;
  readonly layout: Layout | undefined;
}

/** What a drawing tells of its fingers. */
export interface TapNotes {
  /** Is told everything that a tap can mean, the likeliest first. */
  met(things: readonly Selection[]): void;
  /** A drag was taken back, and by what. */
  takenBack(by: keyof typeof TAKEN_BACK): void;
  /** The drawing shows something else: what lies under the tap is no news any more. */
  forget(): void;
}

/** How long a note of what happened stays, ms. */
const NOTE = 4000;

const nobody: readonly Selection[] = [];

/** What the plan says of the last tap, until selection, layout or view are another or a tap goes elsewhere, and of a drag that was taken back. */
export function useTapNotes(layout: Layout): {
  readonly notes: TapNotes;
  readonly here: readonly Selection[];
  readonly note: string | null;
} {
  const selection = useSession((state) => state.selection);
  const [tapped, setTapped] = useState<Tapped | null>(null);
  const [note, setNote] = useState<string | null>(null);
  const met = useCallback((things: readonly Selection[]) => {
    const now = session.getState();
    setTapped({ things, selection: now.selection, layout: now.open?.layout });
  }, []);
  const takenBack = useCallback((by: keyof typeof TAKEN_BACK) => setNote(TAKEN_BACK[by]), []);
  const forget = useCallback(() => setTapped(null), []);
  useEffect(() => {
    if (note === null) return undefined;
    const wait = setTimeout(() => setNote(null), NOTE);
    return () => clearTimeout(wait);
  }, [note]);
  useForgetElsewhere(tapped !== null, forget);
  const isNow = tapped?.selection === selection && tapped.layout === layout;
  return {
    notes: useMemo(() => ({ met, takenBack, forget }), [met, takenBack, forget]),
    here: isNow ? tapped.things : nobody,
    note,
  };
}

/** A view that moved has something else under the finger. */
export function useForgetOnMove(view: View, { forget }: TapNotes): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the view that counts
  useEffect(() => forget(), [view, forget]);
}

function useForgetElsewhere(isOn: boolean, forget: () => void): void {
  useEffect(() => {
    if (!isOn) return undefined;
    const pressed = ({ target }: Event): void => {
      if (!(target instanceof Element && target.closest('.plan-touch'))) forget();
    };
    window.addEventListener('pointerdown', pressed, true);
    return () => window.removeEventListener('pointerdown', pressed, true);
  }, [isOn, forget]);
}
