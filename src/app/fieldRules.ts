import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import { ringSubject } from '../session/ringSubject.ts';
import { type SessionState, session } from '../session/session.ts';
import type { FieldKind, Fields, Wanted } from './fieldQuestion.ts';

/** What the session wants of one kind of field, and where it is shown. */
export interface FieldRule<Kind extends FieldKind = FieldKind> {
  readonly kind: Kind;
  /** Follows a gesture from answer to answer, because it is quick; others wait for a rest. */
  readonly live: boolean;
  wanted(now: SessionState): Wanted | null;
  /** Whether two questions have the same answer, by what it is computed from. Edits share what they don't change. */
  same(a: Wanted, b: Wanted): boolean;
  /** Whether a field, perhaps of an earlier layout, is about what is wanted. */
  isAbout(field: Fields[Kind], wanted: Wanted): boolean;
  shown(now: SessionState): Fields[Kind] | null;
  show(field: Fields[Kind] | null): void;
  /** Marks what is shown as that of before; left out where nothing says so. */
  outdate?(): void;
}

const micIn = ({ layout, mic }: Wanted): Mic | undefined =>
  layout.mics.find(({ id }) => id === mic);

const sameMotion = (a: Layout, b: Layout): boolean =>
  a.player === b.player && a.pieces === b.pieces;

/** Where the selected mic, at its height, would be struck. */
export const zoneRule: FieldRule<'zone'> = {
  kind: 'zone',
  live: false,
  wanted({ open, selection, preferences }) {
    if (!open || !preferences.showZone || selection?.kind !== 'mic') return null;
    const wanted = { layout: open.layout, mic: selection.id };
    return micIn(wanted) ? wanted : null;
  },
  same: (a, b) =>
    micIn(a) === micIn(b) &&
    sameMotion(a.layout, b.layout) &&
    a.layout.ownClasses === b.layout.ownClasses,
  isAbout: (zone, wanted) => zone.mic === wanted.mic,
  shown: ({ zone }) => zone,
  show: (zone) => session.setState({ zone, zoneIsOld: false }),
  outdate: () => session.setState({ zoneIsOld: true }),
};

/** What the clip mic that is selected, or sits on the selected drum or could, would be all round its rim. */
export const ringRule: FieldRule<'ring'> = {
  kind: 'ring',
  live: true,
  wanted({ open, selection }) {
    if (!open) return null;
    const { layout } = open;
    const subject = ringSubject(layout, selection);
    if (subject === null) return null;
    return subject.kind === 'mic'
      ? { layout, mic: subject.mic }
      : { layout, mic: null, drum: subject.drum };
  },
  same: (a, b) =>
    a.mic === b.mic &&
    a.drum === b.drum &&
    (a.drum === undefined ? sameBesideAngle(micIn(a), micIn(b)) : sameRoom(a.layout, b.layout)) &&
    sameMotion(a.layout, b.layout) &&
    a.layout.ownClasses === b.layout.ownClasses &&
    a.layout.margin === b.layout.margin,
  isAbout: (ring, wanted) =>
    wanted.drum === undefined
      ? ring.mic === wanted.mic
      : ring.planned !== undefined && ring.drum === wanted.drum,
  shown: ({ ring }) => ring,
  show: (ring) => session.setState({ ring }),
};

/** Whether a mic that is not placed yet finds the same things in its way. */
const sameRoom = (a: Layout, b: Layout): boolean => a.mics === b.mics && a.deck === b.deck;

/** Whether two states of a clip mic have the same ring: wherever on the rim it sits now. */
function sameBesideAngle(a: Mic | undefined, b: Mic | undefined): boolean {
  if (a === b) return true;
  if (a?.mount.kind !== 'clip' || b?.mount.kind !== 'clip') return false;
  const [p, q] = [a.mount, b.mount];
  return (
    a.micClass === b.micClass &&
    p.drum === q.drum &&
    p.reach === q.reach &&
    p.height === q.height &&
    p.pitch === q.pitch
  );
}

/** The lowest heights that sticks, hands and forearms sweep. */
export const floorRule: FieldRule<'floor'> = {
  kind: 'floor',
  live: false,
  wanted: ({ open, preferences }) =>
    open && preferences.showFloor ? { layout: open.layout, mic: null } : null,
  same: (a, b) => sameMotion(a.layout, b.layout) && a.layout.units === b.layout.units,
  isAbout: () => true,
  shown: ({ floor }) => floor,
  show: (floor) => session.setState({ floor }),
};
