import {
  createContext,
  type RefObject,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { type Selection, sameSelection } from '../../session/selection.ts';
import { select, showFinding, useSession } from '../../session/session.ts';

export type SectionId =
  | 'findings'
  | 'kit'
  | 'mics'
  | 'cables'
  | 'patch'
  | 'sound'
  | 'stage'
  | 'player';

/** Parts of sections that something elsewhere leads to. */
type SectionPart = 'stock' | 'boxSpots';

/** What the panel shows: one of its sections, or the details of what is selected. */
export interface PanelState {
  readonly section: SectionId;
  readonly details: boolean;
  /** The part of the section that is brought up; null: its top. */
  readonly part: SectionPart | null;
  goTo(section: SectionId, part?: SectionPart): void;
  /** Selects a thing and opens its details. */
  open(selection: Selection): void;
  /** Shows a thing on the plan; the section stays. `key` is the finding that is shown, if it is one. */
  point(key: string | null, selection: Selection | null): void;
  closeDetails(): void;
}

/**
 * A thing selected elsewhere, as on the plan, opens its details; one selected from a list does not. Sound stays open, so that
 * its figures are seen while a mic is dragged.
 */
export function usePanelState(): PanelState {
  const selection = useSession((state) => state.selection);
  const [section, setSection] = useState<SectionId>('findings');
  const [details, setDetails] = useState(false);
  const [part, setPart] = useState<SectionPart | null>(null);
  const pointed = useRef<Selection | null>(null);
  const before = useRef<Selection | null>(null);
  const shown = useRef(section);
  shown.current = section;

  useEffect(() => {
    if (sameSelection(before.current, selection)) return;
    before.current = selection;
    const opens = selection !== null && !sameSelection(pointed.current, selection);
    setDetails((isOpen) => opens && (isOpen || shown.current !== 'sound'));
  }, [selection]);

  const goTo = useCallback((to: SectionId, wanted: SectionPart | null = null) => {
    setSection(to);
    setPart(wanted);
    setDetails(false);
  }, []);
  const open = useCallback((to: Selection) => {
    pointed.current = null;
    select(to);
    setDetails(true);
  }, []);
  const point = useCallback((key: string | null, to: Selection | null) => {
    pointed.current = to;
    showFinding(key, to);
  }, []);
  const closeDetails = useCallback(() => setDetails(false), []);

  return useMemo(
    () => ({ section, details, part, goTo, open, point, closeDetails }),
    [section, details, part, goTo, open, point, closeDetails],
  );
}

export const PanelContext = createContext<PanelState | null>(null);

/** The panel a component stands in. */
export function usePanel(): PanelState {
  const panel = useContext(PanelContext);
  if (panel === null) throw new Error('usePanel needs a PanelContext around it');
  return panel;
}

/** The heading of a part of a section: it comes into view, and takes the focus, where it was led to. */
export function useBroughtUp(part: SectionPart): RefObject<HTMLHeadingElement | null> {
  const panel = usePanel();
  const heading = useRef<HTMLHeadingElement>(null);
  const isWanted = panel.part === part;
  useEffect(() => {
    if (!isWanted) return;
    heading.current?.scrollIntoView({ block: 'start' });
    heading.current?.focus({ preventScroll: true });
  }, [isWanted]);
  return heading;
}
