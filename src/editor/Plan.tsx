import { type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import { createFigures } from '../report/figure.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { focusOn, type MicFocus } from './canvas/micFocus.ts';
import { ElevationPane } from './ElevationPane.tsx';
import { KeyList } from './PlanButtons.tsx';
import { PlanPane } from './PlanPane.tsx';
import { PlanText } from './PlanText.tsx';
import { palettes } from './palette.ts';
import { holdsTwo, panesOf } from './panes.ts';
import './plan.css';
import { ViewChoice } from './ViewChoice.tsx';
import type { ScreenSize } from './view/view.ts';
import { drawingsName } from './words.ts';

/** The plan and the elevations of the open layout; fills its parent. Empty while no layout is open. */
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
      aria-label={drawingsName}
      style={{ background: palettes[theme].floor }}
    >
      {shown && <OpenDrawings open={open} size={size} />}
    </section>
  );
}

function OpenDrawings({ open, size }: { readonly open: OpenLayout; readonly size: ScreenSize }) {
  const drawing = useSession((state) => state.preferences.drawing);
  const panes = useMemo(() => panesOf(drawing, size), [drawing, size]);
  const focus = useMicFocus(open);
  const described = useId();
  return (
    <>
      {panes.map(({ kind, left, top, size: own }) => (
        <div key={kind} className="plan-pane" style={{ left, top, ...own }}>
          {kind === 'plan' ? (
            <PlanPane open={open} size={own} focus={focus} described={described} />
          ) : (
            <ElevationPane
              open={open}
              size={own}
              top={top}
              focus={focus}
              described={described}
              facing={kind}
              alone={panes.length === 1}
            />
          )}
        </div>
      ))}
      <div className="plan-head">
        <PlanText id={described} open={open} legends={panes.some(({ kind }) => kind === 'plan')} />
        <ViewChoice roomForTwo={holdsTwo(size)} />
        <KeyList />
      </div>
    </>
  );
}

/** What the selected mic is judged by; null when no mic is selected. */
function useMicFocus({ layout, report }: OpenLayout): MicFocus | null {
  const selection = useSession((state) => state.selection);
  const mic = selection?.kind === 'mic' ? selection.id : null;
  const [figureIn] = useState(createFigures);
  const figure = figureIn(layout);
  return useMemo(
    () => (mic === null ? null : focusOn(layout, report, mic, figure)),
    [layout, report, mic, figure],
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
