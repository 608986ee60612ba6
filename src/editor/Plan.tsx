import { useId, useMemo, useRef, useState } from 'react';
import { answeredOf, type OpenLayout, useSession } from '../session/session.ts';
import { ElevationPane } from './ElevationPane.tsx';
import { MoveBar } from './move/MoveBar.tsx';
import { useMove } from './move/useMove.ts';
import { KeyList } from './PlanButtons.tsx';
import { PlanPane } from './PlanPane.tsx';
import { PlanText } from './PlanText.tsx';
import { palettes } from './palette.ts';
import { holdsTwo, panesOf } from './panes.ts';
import './plan.css';
import { PlannedCard } from './rim/PlannedCard.tsx';
import { RingCard } from './rim/RingCard.tsx';
import { useAskedPlace } from './rim/useAskedPlace.ts';
import { useTapNotes } from './useTapNotes.ts';
import { ViewChoice } from './ViewChoice.tsx';
import { useSizeOf } from './view/useSizeOf.ts';
import type { ScreenSize } from './view/view.ts';
import { drawingsName, LEG_AT_REST } from './words.ts';

/** The plan and the elevations of the open layout; fills its parent. Empty while no layout is open. */
export function Plan() {
  // As it was answered: in a drag only what draws where things are follows the finger itself.
  const open = useSession((state) => state.open && answeredOf(state.open));
  const theme = useSession((state) => state.preferences.theme);
  const isOffered = useSession(({ gesture }) => gesture?.isOffer === true);
  const frame = useRef<HTMLElement>(null);
  const size = useSizeOf(frame);
  const shown = open !== null && size.width > 0 && size.height > 0;
  return (
    <section
      ref={frame}
      className={`plan plan-${theme}${isOffered ? ' plan-offered' : ''}`}
      aria-label={drawingsName}
      style={{ background: palettes[theme].floor }}
    >
      {shown && <OpenDrawings open={open} size={size} />}
    </section>
  );
}

function OpenDrawings({ open, size }: { readonly open: OpenLayout; readonly size: ScreenSize }) {
  const { layout } = open;
  const drawing = useSession((state) => state.preferences.drawing);
  const panes = useMemo(() => panesOf(drawing, size), [drawing, size]);
  const ring = useSession((state) => state.ring);
  const showSweeps = useSession((state) => state.preferences.showSweeps);
  const { focus, move } = useMove(open);
  const [looksAt, setLooksAt] = useState<string | null>(null);
  const selected = useSession(({ selection }) => (selection?.kind === 'mic' ? selection.id : null));
  // Whoever goes on to another thing has seen the move: it does not come back unasked.
  if (looksAt !== null && looksAt !== selected) setLooksAt(null);
  const opened = showSweeps && move !== null && move.mic === looksAt ? looksAt : null;
  const asked = useAskedPlace(open, ring);
  const described = useId();
  const hasPlan = panes.some(({ kind }) => kind === 'plan');
  const planned = hasPlan ? ring?.planned : undefined;
  const atRest = move === null && focus !== null && focus.leg.length > 0;
  const cards = (asked.place || planned ? 1 : 0) + (showSweeps && (move || atRest) ? 1 : 0);
  const { notes, here, note } = useTapNotes(layout);
  const legends = useRef<HTMLDivElement>(null);
  const legendSize = useSizeOf(legends);
  return (
    <>
      {panes.map(({ kind, left, top, size: own }) => {
        const foot = top + own.height === size.height ? cards * CARD : 0;
        const corner = left === 0 && top === 0 ? legendSize : nothing;
        const pane = {
          open,
          focus,
          opened,
          described,
          foot,
          top,
          size: own,
          legends: corner,
          notes,
        };
        return (
          <div key={kind} className="plan-pane" style={{ left, top, ...own }}>
            {kind === 'plan' ? (
              <PlanPane {...pane} asked={asked} />
            ) : (
              <ElevationPane {...pane} facing={kind} alone={panes.length === 1} />
            )}
          </div>
        );
      })}
      <div className="plan-head">
        <PlanText {...{ here, note, legends }} id={described} open={open} explains={hasPlan} />
        <ViewChoice roomForTwo={holdsTwo(size)} />
        <KeyList />
      </div>
      <div className="plan-foot">
        {planned && <PlannedCard layout={layout} planned={planned} asked={asked} />}
        {asked.place && !planned && (
          <RingCard layout={layout} place={asked.place} forget={asked.forget} />
        )}
        {move && showSweeps && (
          <MoveBar
            move={move}
            judged={layout}
            isOpen={opened !== null}
            open={(isOpen) => setLooksAt(isOpen ? move.mic : null)}
          />
        )}
        {atRest && showSweeps && <p className="plan-card plan-note">{LEG_AT_REST}</p>}
      </div>
    </>
  );
}

const nothing: ScreenSize = { width: 0, height: 0 };

/** Room that one card over the lower edge takes, px. */
const CARD = 66;
