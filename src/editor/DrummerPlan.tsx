import { type PointerEvent, useMemo, useRef } from 'react';
import type { Id } from '../layout/fields.ts';
import { isStruck } from '../layout/pieces/piece.ts';
import type { Finding } from '../report/report.ts';
import { sceneFindings } from '../report/sceneFindings.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Selection } from '../session/selection.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { keyOf, questionAt, type Signing, say, useSigning } from '../session/signing.ts';
import { PlanStage } from './canvas/PlanStage.tsx';
import type { Furniture } from './labels/reserved.ts';
import { palettes } from './palette.ts';
import './plan.css';
import { extentOfDeck, extentOfKit } from './view/extent.ts';
import { screenToKit } from './view/kitView.ts';
import { useSizeOf } from './view/useSizeOf.ts';
import { type Border, type Bounds, fitted, type ScreenSize, type View } from './view/view.ts';

/** Ground shown round a mic that is asked about, mm; the throne is always in view, so that its place is understood. */
const ROUND_MIC = 420;
const ROUND_THRONE = 260;
/** Nothing stands over the drawing but its scale bar and legend. */
const BARE: Furniture = {
  head: false,
  legend: true,
  foot: 0,
  legends: { width: 0, height: 0 },
  isFixed: true,
};
const NOTHING: readonly Finding[] = [];
const BORDER: Border = { top: 24, right: 24, bottom: 52, left: 24 };

/** The plan as the drummer sees it, for the sign-off: what is asked about, large. Nothing on it can be moved by touch. */
export function DrummerPlan() {
  const open = useSession((state) => state.open);
  const theme = useSession((state) => state.preferences.theme);
  const frame = useRef<HTMLElement>(null);
  const size = useSizeOf(frame);
  return (
    <section
      ref={frame}
      className={`plan plan-${theme}`}
      aria-label="Plan from the player's seat"
      style={{ background: palettes[theme].floor }}
    >
      {open && size.width > 0 && size.height > 0 && <Shown open={open} size={size} />}
    </section>
  );
}

function Shown({ open, size }: { readonly open: OpenLayout; readonly size: ScreenSize }) {
  const { layout, report } = open;
  const preferences = useSession((state) => state.preferences);
  const asking = useSigning();
  const question = questionAt(asking);
  const mic = question?.about === 'mic' ? question.mic : null;
  const said = question ? asking.said[keyOf(question)] : undefined;
  const isPointing = mic !== null && said?.answer === 'move';
  // The way out is judged by the cables that lie on it: where it is asked about, and over all questions where something is open about it.
  const { lane } = sceneFindings(report);
  const isOverview = question === null && lane.length > 0;
  const showRuns = question?.about === 'lane' || isOverview;
  const view = useFitted(open, size, showRuns ? 'deck' : mic);
  const kitView = useMemo(() => ({ view, deck: layout.deck }), [view, layout.deck]);
  const selection = useMemo(
    (): Selection | null => (mic === null ? null : { kind: 'mic', id: mic }),
    [mic],
  );
  const plain = useMemo(() => ({ ...preferences, showRuns }), [preferences, showRuns]);
  const scene = question && question.about !== 'mic' ? question.about : null;
  const ringed = scene === null ? (isOverview ? lane : NOTHING) : sceneFindings(report)[scene];
  const point = (event: PointerEvent<HTMLButtonElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const at = { x: event.clientX - box.left, y: event.clientY - box.top };
    const { x, y } = screenToKit(kitView, at);
    // A finger points at no fraction of a millimetre.
    if (mic !== null) say({ about: 'mic', mic }, { wish: { x: Math.round(x), y: Math.round(y) } });
  };
  return (
    <>
      <PlanStage
        {...{ open, selection, kitView }}
        chosen={null}
        zone={null}
        zoneIsOld={false}
        ring={null}
        floor={null}
        asked={null}
        focus={null}
        preferences={plain}
        covered={[]}
        furniture={BARE}
        marks={null}
        finding={isPointing ? wished(mic, said.wish) : undefined}
        wishes={asking.step.at === 'consent' ? allWished(asking) : ringed}
      />
      {isPointing && (
        <button
          type="button"
          className="wish-surface"
          aria-label="Point at the spot where it should be; the arrows beside the plan do the same"
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            point(event);
          }}
          onPointerMove={(event) => {
            if (event.buttons > 0) point(event);
          }}
        />
      )}
    </>
  );
}

/** The marks of all wished spots, for the summary. */
const allWished = ({ asked, said }: Signing): readonly Finding[] =>
  asked.flatMap((mic) => {
    const answer = said[keyOf({ about: 'mic', mic })];
    return (answer?.answer === 'move' && wished(mic, answer.wish)) || [];
  });

/** The mark of the wished spot. */
function wished(
  mic: Id,
  wish: { readonly x: number; readonly y: number } | null,
): Finding | undefined {
  if (!wish) return undefined;
  const key = `mic-move-wished:${mic}`;
  const place = { x: wish.x, y: wish.y, z: 0 };
  return { key, code: 'mic-move-wished', severity: 'warn', about: [mic], place, numbers: {} };
}

/** Fitted anew for every question, and never while a finger points. */
function useFitted(open: OpenLayout, size: ScreenSize, subject: Id | 'deck' | null): View {
  return useMemo(() => {
    const view: View = { seenFrom: 'player', size, centre: { x: 0, y: 0 }, scale: 1 };
    return fitted(view, extentFor(open, subject), BORDER);
  }, [open, size, subject]);
}

function extentFor({ layout, report }: OpenLayout, subject: Id | 'deck' | null): Bounds {
  // A throne alone, shown as large as it can be, says nothing of where it stands.
  const isEmpty = layout.mics.length === 0 && !layout.pieces.some(isStruck);
  if (subject === 'deck' || isEmpty) return extentOfDeck(layout, report.rig);
  const placed = report.rig.mics.find(({ mic }) => mic.id === subject);
  if (!placed) return extentOfKit(layout, report.rig);
  const tip = toDeck(layout.deck, placed.tip);
  const throne = toDeck(layout.deck, { x: 0, y: 0 });
  return {
    left: Math.min(tip.x - ROUND_MIC, throne.x - ROUND_THRONE),
    right: Math.max(tip.x + ROUND_MIC, throne.x + ROUND_THRONE),
    back: Math.min(tip.y - ROUND_MIC, throne.y - ROUND_THRONE),
    front: Math.max(tip.y + ROUND_MIC, throne.y + ROUND_THRONE),
  };
}
