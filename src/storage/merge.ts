import type { Id } from '../layout/fields.ts';
import type { Marks } from './port.ts';
import type { ShelfTurn } from './shelf.ts';
import type { StoredHead, StoredRevision, WholeRevision } from './stored.ts';

/** A layout that comes from another tablet or from the second copy. */
export interface IncomingLayout extends Marks {
  readonly id: Id;
  /** The revision that holds there. */
  readonly revision: number;
  readonly removedAt: number | null;
  /** Last revisions of other lines there. */
  readonly asides: readonly number[];
  /** All revisions there, the first one first, every one checked: its text is a layout with this id. */
  readonly revisions: readonly WholeRevision[];
  /** What a list shows of the revision that holds there. */
  readonly facts: Pick<
    StoredHead,
    'name' | 'venue' | 'date' | 'player' | 'pieces' | 'mics' | 'picture' | 'signOff' | 'signOffs'
  >;
}

/**
 * What a merge did. `new`: it was not here; `went-on`: its line is the one here, gone on; `two-lines`: both went their own
 * way, the one here holds and the other one stands beside it; `history`: the same, with points that were not here.
 */
export interface MergeOutcome {
  readonly kind: 'new' | 'went-on' | 'two-lines' | 'history' | 'nothing-new';
  /** Where the revision that holds there is found here. */
  readonly theirs: number;
}

/**
 * Takes a layout in beside what is here; nothing that is here is changed or dropped. The same content of the same moment is
 * the same revision. Where the content that holds on one side is known on the other, that line simply goes on; otherwise there are
 * two lines. What was removed here and is there comes back.
 */
export async function mergeInto(turn: ShelfTurn, incoming: IncomingLayout): Promise<MergeOutcome> {
  const { id } = incoming;
  const head = await turn.head(id);
  const here = await turn.revisions(id);
  const known = new Set(here.map(({ digest }) => digest));
  const add = adder(turn, here, head?.last ?? 0);
  for (const one of incoming.revisions) add.take(one);
  const theirs = add.numberOf(incoming.revision);
  if (theirs === undefined) throw new Error('the revision that holds is not among those given');
  const { last, added } = add.sums();
  const theirHead = incoming.revisions.find(({ revision }) => revision === incoming.revision);
  const digestOfTheirs = theirHead?.digest ?? '';
  const newAsides = incoming.revisions
    .filter(({ revision, digest }) => incoming.asides.includes(revision) && !known.has(digest))
    .flatMap(({ revision }) => add.numberOf(revision) ?? []);
  if (head === undefined) {
    turn.putHead(newHead(incoming, { revision: theirs, asides: newAsides, last }));
    return { kind: 'new', theirs };
  }
  const removedAt = incoming.removedAt === null ? null : head.removedAt;
  const put = (more: Partial<StoredHead>, others: readonly number[]): void => {
    const asides = [...new Set([...head.asides, ...others])];
    turn.putHead({ ...head, ...more, last, removedAt, asides, otherLines: asides.length });
  };
  if (known.has(digestOfTheirs)) {
    const isNews = added > 0 || removedAt !== head.removedAt;
    if (isNews) put({}, newAsides);
    return { kind: isNews ? 'history' : 'nothing-new', theirs };
  }
  if (holdsOnMainLine(incoming, head.digest)) {
    const changedAt = theirHead?.at ?? head.changedAt;
    put({ ...incoming.facts, digest: digestOfTheirs, changedAt, revision: theirs }, newAsides);
    return { kind: 'went-on', theirs };
  }
  put({}, [...newAsides, theirs]);
  return { kind: 'two-lines', theirs };
}

/** Whether a content lies on the line that holds there: on any point that does not belong to another line alone. */
function holdsOnMainLine({ revisions, revision, asides }: IncomingLayout, digest: string): boolean {
  const byNumber = new Map(revisions.map((one) => [one.revision, one]));
  const lineTo = (tip: number): Set<number> => {
    const line = new Set<number>();
    for (let at = byNumber.get(tip); at && !line.has(at.revision); at = byNumber.get(at.parent)) {
      line.add(at.revision);
    }
    return line;
  };
  const main = lineTo(revision);
  const aside = new Set(asides.flatMap((tip) => [...lineTo(tip)]));
  return revisions.some(
    (one) => one.digest === digest && (main.has(one.revision) || !aside.has(one.revision)),
  );
}

const keyOf = ({ digest, at }: StoredRevision): string => `${digest} ${at}`;

/** Adds revisions that are not here, under the next free numbers; into an empty place under their own. */
function adder(turn: ShelfTurn, here: readonly StoredRevision[], last: number) {
  const found = new Map<number, number>();
  const known = new Map(here.map((one) => [keyOf(one), one]));
  let [highest, added] = [last, 0];
  return {
    take(one: WholeRevision): void {
      const mine = known.get(keyOf(one));
      if (mine !== undefined) {
        found.set(one.revision, mine.revision);
        turn.putRevision(withMarksOf(mine, one));
        return;
      }
      const revision = here.length === 0 ? one.revision : highest + 1;
      const { packed, ...facts } = one;
      const parent = found.get(one.parent) ?? 0;
      turn.addRevision({ ...facts, revision, parent }, { id: one.id, revision, packed });
      found.set(one.revision, revision);
      highest = Math.max(highest, revision);
      added += 1;
    },
    numberOf: (revision: number) => found.get(revision),
    sums: () => ({ last: highest, added }),
  };
}

/** A name that was given on either side stays; where both were, the one here. */
const withMarksOf = (mine: StoredRevision, other: StoredRevision): StoredRevision => ({
  ...mine,
  name: mine.name === '' ? other.name : mine.name,
  shared: mine.shared || other.shared,
});

function newHead(
  incoming: IncomingLayout,
  { revision, asides, last }: Pick<StoredHead, 'revision' | 'asides' | 'last'>,
): StoredHead {
  const { id, facts, favourite, archived, tags, removedAt, revisions } = incoming;
  const holding = revisions.find((one) => one.revision === incoming.revision);
  return {
    id,
    ...facts,
    favourite,
    archived,
    tags,
    removedAt,
    revision,
    asides,
    last,
    otherLines: asides.length,
    digest: holding?.digest ?? '',
    changedAt: holding?.at ?? 0,
    // Thinned at the next start, by the same rule.
    thinAt: 0,
  };
}
