import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { ticksAfter } from '../layout/edit/ticksAfter.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { createAnalyst } from '../report/analyse.ts';
import type { FloorReport } from '../report/floor.ts';
import type { Report } from '../report/report.ts';
import type { RingOfMic } from '../report/ring.ts';
import type { ForbiddenZone } from '../report/zone.ts';
import { type Answerer, BesideAnswers } from './besideAnswers.ts';
import { emptyHistory, type History, recorded, redone, undone } from './history.ts';
import type { CopyState, LibraryRow, Restored, SaveState, TakenLibrary } from './library.ts';
import type { PageName } from './pages.ts';
import { type PatchView, type PlanMarks, usualPatchView } from './patchView.ts';
import { isThere, type Selection } from './selection.ts';
import { type SoundPreferences, usualSoundPreferences } from './soundPreferences.ts';

export type LayoutEdit = (layout: Layout) => Layout;

/** What is drawn: the plan, an elevation from the front or the side, or the plan with one of them. */
export type Drawing = 'plan' | 'front' | 'side' | 'planAndFront' | 'planAndSide';

/** How the user likes to see things; kept on the machine, never in a layout. */
export interface Preferences {
  readonly theme: 'dark' | 'light';
  /** The plan as the audience sees it (audience at the bottom) or as the player does (player at the bottom). */
  readonly seenFrom: 'house' | 'player';
  readonly showSweeps: boolean;
  readonly showRuns: boolean;
  readonly showZone: boolean;
  /** Contours of the stick floor. */
  readonly showFloor: boolean;
  readonly drawing: Drawing;
  readonly sound: SoundPreferences;
  /** Layouts whose strike was said to be over on this device, the last one first. */
  readonly strikesOver: readonly Id[];
}

/** The layout that is open, with all that was computed from it. */
export interface OpenLayout {
  readonly layout: Layout;
  readonly report: Report;
  /**
   * While the drawing of a gesture runs ahead of its answers: the preview whose answers are drawn, and the newest one that is answered. Only the report's
   * rig is this layout's own then.
   */
  readonly answered?: OpenLayout;
  readonly newest?: OpenLayout;
}

/** The preview whose answers are drawn; at rest the open layout itself. */
export const answeredOf = (open: OpenLayout): OpenLayout => open.answered ?? open;

/** The newest preview that is answered; at rest the open layout itself. */
export const newestOf = (open: OpenLayout): OpenLayout => open.newest ?? open;

/** A change that is shown before it is a step: the layout before it, and what the step will be called. */
export interface Gesture {
  readonly label: string;
  readonly before: Layout;
  /** The report of `before`. */
  readonly beforeReport: Report;
  /** A change that the app proposes: it stays until it is taken or left, and any other step leaves it. */
  readonly isOffer?: true;
}

export interface SessionState {
  readonly open: OpenLayout | null;
  /** The page that is shown over the open layout; null: the plan with its panel. */
  readonly page: PageName | null;
  readonly history: History;
  /** The gesture or offer that is under way; null when none is. */
  readonly gesture: Gesture | null;
  readonly selection: Selection | null;
  /** Key of the finding that is shown on the plan. */
  readonly shownFinding: string | null;
  /** Where the selected mic, at its height, would be struck; null while unknown. */
  readonly zone: ForbiddenZone | null;
  /** Whether the zone is that of before a change, until the new one is there. */
  readonly zoneIsOld: boolean;
  /** What the clip mic that is selected, or sits on the selected drum or could, would be all round its rim; null while unknown. */
  readonly ring: RingOfMic | null;
  /** The lowest heights that are swept; null while unknown, and while it is not shown. */
  readonly floor: FloorReport | null;
  readonly patchView: PatchView;
  /** What is marked on the plan in place of the verdicts; null: nothing. */
  readonly marks: PlanMarks | null;
  readonly preferences: Preferences;
  readonly library: readonly LibraryRow[] | null;
  /** Listed layouts whose latest content the storage refused: it is gone when the page closes. */
  readonly unsaved: readonly Id[];
  readonly saving: SaveState | null;
  /** Whether the browser promised to keep the data; null while unknown. */
  readonly kept: boolean | null;
  readonly updateWaiting: boolean;
  readonly copy: CopyState;
  /** What came back from the second copy at this start; null when nothing had to, and once it was read. */
  readonly restored: Restored | null;
  /** How far the library is that is being taken in, in layouts; null while none is. */
  readonly taking: { readonly read: number; readonly promised: number } | null;
  /** What became of library files that were taken in, until it was read: the first one first. */
  readonly taken: readonly TakenLibrary[];
}

export const initialState: SessionState = {
  open: null,
  page: null,
  history: emptyHistory,
  gesture: null,
  selection: null,
  shownFinding: null,
  zone: null,
  zoneIsOld: false,
  ring: null,
  floor: null,
  patchView: usualPatchView,
  marks: null,
  preferences: {
    theme: 'dark',
    seenFrom: 'house',
    showSweeps: true,
    showRuns: true,
    showZone: true,
    showFloor: false,
    drawing: 'plan',
    sound: usualSoundPreferences,
    strikesOver: [],
  },
  library: null,
  unsaved: [],
  saving: null,
  kept: null,
  updateWaiting: false,
  copy: { kind: 'checking' },
  restored: null,
  taking: null,
  taken: [],
};

/** The one store of the page: what is open, selected and undoable now. */
export const session = createStore<SessionState>(() => initialState);

const analyse = createAnalyst();
const beside = new BesideAnswers();
/** Has what a drag shows answered beside the page; null: in the page itself. */
export const answerBeside = (answerer: Answerer | null): void => beside.answerBy(answerer);
const opened = (layout: Layout, inHurry = false): OpenLayout => ({
  layout,
  report: analyse(layout, inHurry),
});

/** Reads a part of the state and redraws when it changes. */
export const useSession = <T>(select: (state: SessionState) => T): T => useStore(session, select);

/** Opens a layout with an empty history; null closes. */
export function openLayout(layout: Layout | null): void {
  beside.forget();
  if (layout) beside.warm(layout);
  session.setState({
    open: layout && opened(layout),
    page: null,
    history: emptyHistory,
    gesture: null,
    selection: null,
    shownFinding: null,
    zone: null,
    ring: null,
    floor: null,
    patchView: usualPatchView,
    marks: null,
  });
}

/** Shows a page over the open layout; null goes back to the plan. What is under way is taken back: nobody sees it go on. */
export function showPage(page: PageName | null): void {
  takeBack();
  if (session.getState().open) session.setState({ page });
}

/**
 * Takes over what was stored of the open layout elsewhere, as one step: what was done here before can still be undone, and what
 * is under way is taken back.
 */
export function takeOver(label: string, layout: Layout): void {
  takeBack();
  const { open, history, selection } = session.getState();
  if (open === null) return;
  session.setState({
    open: opened(layout),
    history: recorded(history, { label, layout: open.layout }),
    ...(selection && !isThere(selection, layout) && { selection: null, zone: null, ring: null }),
  });
}

/** Makes one undoable change, in which what is set otherwise loses its tick. An edit that returns the same layout leaves no step. */
export function edit(label: string, change: LayoutEdit): void {
  settle();
  const { open, history } = session.getState();
  if (!open) return;
  const next = ticksAfter(open.layout, change(open.layout));
  if (next === open.layout) return;
  session.setState({
    open: opened(next),
    history: recorded(history, { label, layout: open.layout }),
  });
}

/** The gesture that is under way, whoever began it; null when none is. */
const underWay = (): Gesture | null => session.getState().gesture;

/**
 * Starts a gesture: what follows until it ends is one undoable step. What began it goes on with what is returned: another finger, a key or a step can
 * begin something else meanwhile, which keeps this one, and what is shown or ended afterwards in the name of this one is ignored. Null where nothing is open.
 */
export function beginGesture(label: string): Gesture | null {
  settle();
  const { open } = session.getState();
  if (!open) return null;
  beside.begin(open);
  const gesture: Gesture = { label, before: open.layout, beforeReport: open.report };
  session.setState({ gesture });
  return gesture;
}

/** Shows a change of the layout as it was before the gesture, analysed in a hurry; the next preview replaces it. */
export function previewGesture(change: LayoutEdit, own = underWay()): void {
  if (own && isUsers(own)) session.setState({ open: opened(change(own.before), true) });
}

/**
 * As {@link previewGesture}, but at once only where things are, with the newest answers that came from beside the page; where nobody answers there,
 * all of it.
 *
 * @param came Is called when newer answers are there, for the next call to show.
 */
export function placeGesture(change: LayoutEdit, came: () => void, own = underWay()): void {
  const { open } = session.getState();
  if (!own || !isUsers(own) || !open) return;
  if (!beside.isThere) {
    previewGesture(change, own);
    return;
  }
  const layout = change(own.before);
  const rig = analyse.place(layout);
  // Asked before anything is shown: the answers come the sooner.
  beside.ask({ layout, rig }, came);
  const answered = beside.forDrawing() ?? answeredOf(open);
  const newest = beside.newest ?? answered;
  session.setState({ open: { layout, report: { ...answered.report, rig }, answered, newest } });
  // What was not its turn yet is drawn in the next frame, even when the finger rests.
  if (newest !== answered) came();
}

/** Ends the gesture and keeps what it did. An offer is no gesture of the user's: it stays. */
export function commitGesture(own = underWay()): void {
  if (own && isUsers(own)) keep();
}

/** Ends the gesture and takes back what it did. */
export function cancelGesture(own = underWay()): void {
  if (own && isUsers(own)) takeBack();
}

/** Whether a gesture is under way still, and the user's. */
const isUsers = (gesture: Gesture): boolean => gesture === underWay() && !gesture.isOffer;

/** Shows a change that the app proposes, fully analysed, until it is taken or left. */
export function beginOffer(label: string, change: LayoutEdit): void {
  const gesture = beginGesture(label);
  if (!gesture) return;
  session.setState({
    gesture: { ...gesture, isOffer: true },
    open: opened(change(gesture.before)),
  });
}

/** Makes what is offered one undoable step. */
export function takeOffer(): void {
  if (isOffered()) keep();
}

/** Puts everything back to before the offer. */
export function leaveOffer(): void {
  if (isOffered()) takeBack();
}

/** The open layout as its user left it: what is only offered is not in it. Null when none is open. */
export function ownLayout({ open, gesture }: SessionState): Layout | null {
  return gesture?.isOffer ? gesture.before : (open?.layout ?? null);
}

/** The open layout as the last step left it: what is only offered or still under way is not in it. Null when none is open. */
export function keptLayout({ open, gesture }: SessionState): Layout | null {
  return gesture?.before ?? open?.layout ?? null;
}

/** The report of {@link ownLayout}; null when none is open. */
export function ownReport({ open, gesture }: SessionState): Report | null {
  return gesture?.isOffer ? gesture.beforeReport : (open?.report ?? null);
}

const isOffered = (): boolean => session.getState().gesture?.isOffer === true;

/** Before anything else is done, a gesture is kept and an offer is left. */
const settle = (): void => (isOffered() ? takeBack() : keep());

function keep(): void {
  const { gesture, open, history } = session.getState();
  if (!gesture) return;
  beside.forget();
  const layout = open && ticksAfter(gesture.before, open.layout);
  const changed = layout !== null && layout !== gesture.before;
  session.setState({
    gesture: null,
    // What was shown in a hurry is analysed in full at rest.
    ...(layout && (!gesture.isOffer || layout !== open.layout) && { open: opened(layout) }),
    ...(changed && {
      history: recorded(history, { label: gesture.label, layout: gesture.before }),
    }),
  });
}

function takeBack(): void {
  const { gesture } = session.getState();
  if (!gesture) return;
  beside.forget();
  session.setState({ gesture: null, open: opened(gesture.before) });
}

export const undo = (): void => step(undone);
export const redo = (): void => step(redone);

/** With something on offer the last thing that happened is the offer: the step back is to leave it. */
function step(move: typeof undone): void {
  if (isOffered()) {
    takeBack();
    return;
  }
  keep();
  const { open, history } = session.getState();
  const moved = open && move(history, open.layout);
  if (!moved) return;
  const { selection } = session.getState();
  session.setState({
    open: opened(moved.layout),
    history: moved.history,
    ...(selection &&
      !isThere(selection, moved.layout) && { selection: null, zone: null, ring: null }),
  });
}

/** Selects a thing; a shown finding is let go. */
export function select(selection: Selection | null): void {
  session.setState({ selection, shownFinding: null, zone: null, ring: null });
}

/** Shows a finding on the plan and selects what it is about. */
export function showFinding(key: string | null, selection: Selection | null): void {
  session.setState({ shownFinding: key, selection, zone: null, ring: null });
}

/** Shows another part of the Patch section. */
export function showPatch(view: Partial<PatchView>): void {
  session.setState({ patchView: { ...session.getState().patchView, ...view } });
}

/** Marks things on the plan; null takes the marks off. */
export const showMarks = (marks: PlanMarks | null): void => session.setState({ marks });

export function prefer(preferences: Partial<Preferences>): void {
  session.setState({ preferences: { ...session.getState().preferences, ...preferences } });
}
