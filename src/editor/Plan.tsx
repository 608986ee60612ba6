import { type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { OpenLayout } from '../session/session.ts';
import { useSession } from '../session/session.ts';
import { handleBoxes } from './canvas/Handles.tsx';
import { PlanStage } from './canvas/PlanStage.tsx';
import { PlanButtons } from './PlanButtons.tsx';
import { PlanText } from './PlanText.tsx';
import { palettes } from './palette.ts';
import { outlinesOf, pickablesOf } from './pick/pickables.ts';
import './plan.css';
import { RingCard } from './rim/RingCard.tsx';
import { useAskedPlace } from './rim/useAskedPlace.ts';
import { handlesOf } from './tools/handles.ts';
import { useKeys } from './useKeys.ts';
import { usePointers } from './usePointers.ts';
import { useRevealSelected, useShownFinding } from './useReveal.ts';
import { useView } from './view/useView.ts';
import type { ScreenSize } from './view/view.ts';
import { planName } from './words.ts';

/** The plan of the open layout; fills its parent. Empty while no layout is open. */
export function Plan() {
  const open = useSession((state) => state.open);
  const theme = useSession((state) => state.preferences.theme);
  const frame = useRef<HTMLElement>(null);
  const size = useSizeOf(frame);
  const shown = open !== null && size.width > 0 && size.height > 0;
  return (
    <section
      ref={frame}
      className={`plan plan-${theme}`}
      aria-label={planName}
      style={{ background: palettes[theme].floor }}
    >
      {shown && <OpenPlan open={open} size={size} />}
    </section>
  );
}

function OpenPlan({ open, size }: { readonly open: OpenLayout; readonly size: ScreenSize }) {
  const { layout, report } = open;
  const preferences = useSession((state) => state.preferences);
  const selection = useSession((state) => state.selection);
  const zone = useSession((state) => state.zone);
  const ring = useSession((state) => state.ring);
  const floor = useSession((state) => state.floor);
  const controls = useView(open, size, preferences.seenFrom);
  const { view } = controls;
  const kitView = useMemo(() => ({ view, deck: layout.deck }), [view, layout.deck]);
  const { showRuns } = preferences;
  const pickables = useMemo(
    () => pickablesOf(layout, report, showRuns),
    [layout, report, showRuns],
  );
  const highlighted = useMemo(() => outlinesOf(pickables, selection), [pickables, selection]);
  const handles = useMemo(
    () => handlesOf(layout, report.rig, selection, kitView),
    [layout, report.rig, selection, kitView],
  );
  const covered = useMemo(() => handleBoxes(handles), [handles]);
  const finding = useShownFinding(open, controls);
  useRevealSelected(open, selection, controls);
  const touch = useRef<HTMLDivElement>(null);
  const asked = useAskedPlace(open, ring, kitView);
  const tapFirst = asked.ask;
  const ground = { kitView, pickables, handles, controls, tapFirst };
  const { takeBack, ...pointers } = usePointers(touch, ground);
  const keys = useKeys({ kitView, controls, takeBack });
  const described = useId();
  return (
    <>
      <PlanStage
        open={open}
        selection={selection}
        zone={zone}
        ring={ring}
        floor={floor}
        asked={asked.place}
        preferences={preferences}
        kitView={kitView}
        highlighted={highlighted}
        handles={handles}
        covered={covered}
        finding={finding}
      />
      {/* One surface for every finger and key: what they mean is found from the drawing's geometry. */}
      <div
        ref={touch}
        className="plan-touch"
        role="application"
        aria-label={planName}
        aria-describedby={described}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application is interactive; its keys are described to those who hear it.
        tabIndex={0}
        {...pointers}
        {...keys}
      />
      <PlanButtons controls={controls} size={size} />
      <PlanText
        id={described}
        open={open}
        selection={selection}
        zone={zone}
        ring={ring}
        floor={floor}
      />
      {asked.place && <RingCard layout={layout} place={asked.place} forget={asked.forget} />}
    </>
  );
}

const nothing: ScreenSize = { width: 0, height: 0 };

/** The size of an element, kept up to date, in whole px. */
function useSizeOf(element: RefObject<HTMLElement | null>): ScreenSize {
  const [size, setSize] = useState(nothing);
  useEffect(() => {
    const observed = element.current;
    if (!observed) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const { width, height } = entry.contentRect;
      setSize({ width: Math.floor(width), height: Math.floor(height) });
    });
    observer.observe(observed);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
