import { isBuiltInMicClass } from './catalogue/micClasses.ts';
import type { Id } from './fields.ts';
import type { Layout } from './layout.ts';
import type { Mic } from './mics/mic.ts';
import { isDrum, isStruck, type Piece } from './pieces/piece.ts';
import { type Path, type Problem, type ProblemCode, showPath, summary } from './problem.ts';

/**
 * What must agree between the parts of a layout whose shapes are right:
 * L1 an id names one thing: pieces, mics and own classes never share one;
 * L2 there is at most one throne: the kit frame stands on it;
 * L3 an own class never takes the id of a built-in class;
 * L4 a clip's drum is a drum of the layout, a plate's kick is a kick;
 * L5 a mic hears pieces of the layout, and its class is known;
 * L6 a held piece is held by another piece, and never in a circle;
 * L7 a channel is of a mic of the layout; its id is that mic's or, like a split's, its own.
 * What refers to an id that two things share is not judged: which of the two is meant is not known before L1 is mended.
 */
export function checkReferences(layout: Layout): readonly Problem[] {
  const pieces = new Map(layout.pieces.map((piece) => [piece.id, piece]));
  const ownClasses = new Set(layout.ownClasses.map((own) => own.id));
  const twice = sharedIds(layout);
  const known: Known = { pieces, ownClasses, shared: new Set(twice.map(({ id }) => id)) };
  return [
    ...twice.map(({ found }) => found),
    ...secondThrones(layout),
    ...layout.ownClasses.flatMap((own, index) =>
      isBuiltInMicClass(own.id)
        ? [
            problem(
              'built-in-id',
              ['ownClasses', index, 'id'],
              'an id no built-in class has',
              own.id,
            ),
          ]
        : [],
    ),
    ...layout.pieces.flatMap((piece, index) => heldProblems(piece, index, known)),
    ...layout.mics.flatMap((mic, index) => micProblems(mic, index, known)),
    ...lostChannels(layout),
  ];
}

/** Whether giving `piece` the carrier `by` would leave every piece held in the end by one that stands (rule L6). */
export function canBeHeldBy(pieces: readonly Piece[], piece: Id, by: Id): boolean {
  const byId = new Map(pieces.map((entry) => [entry.id, entry]));
  return byId.has(by) && !leadsTo(byId, by, piece);
}

interface Known {
  readonly pieces: ReadonlyMap<Id, Piece>;
  readonly ownClasses: ReadonlySet<Id>;
  /** Ids of more than one thing. */
  readonly shared: ReadonlySet<Id>;
}

interface SharedId {
  readonly id: Id;
  readonly found: Problem;
}

const problem = (code: ProblemCode, path: Path, expected: string, actual: unknown): Problem => ({
  code,
  path: showPath(path),
  expected,
  actual: summary(actual),
});

function sharedIds(layout: Layout): SharedId[] {
  const firstPlace = new Map<Id, string>();
  const firstChannels = new Set<Id>();
  return named(layout).flatMap(([list, entries]) =>
    entries.flatMap(({ id, mic }, index) => {
      const path = [...list, index, 'id'];
      if (mic === id && !firstChannels.has(id)) {
        firstChannels.add(id);
        return [];
      }
      const first = firstPlace.get(id);
      if (first !== undefined) {
        const expected = `an id of its own (${first} has this one)`;
        return [{ id, found: problem('id-twice', path, expected, id) }];
      }
      firstPlace.set(id, showPath(path));
      return [];
    }),
  );
}

type Named = readonly [list: Path, entries: readonly { readonly id: Id; readonly mic?: Id }[]];

/** Everything with an id; a channel also with its mic, whose id the first channel shares. */
const named = ({ pieces, mics, ownClasses, patch }: Layout): readonly Named[] => [
  [['pieces'], pieces],
  [['mics'], mics],
  [['ownClasses'], ownClasses],
  [['patch', 'channels'], patch.channels],
  [['patch', 'splits'], patch.splits],
];

function lostChannels({ mics, patch }: Layout): Problem[] {
  const known = new Set(mics.map(({ id }) => id));
  return patch.channels.flatMap(({ mic }, index) =>
    known.has(mic)
      ? []
      : [problem('no-such-thing', ['patch', 'channels', index, 'mic'], 'the id of a mic', mic)],
  );
}

function secondThrones(layout: Layout): Problem[] {
  const thrones = layout.pieces.flatMap((piece, index) => (piece.kind === 'throne' ? [index] : []));
  return thrones
    .slice(1)
    .map((index) => problem('second-throne', ['pieces', index, 'kind'], 'one throne', 'throne'));
}

function heldProblems(piece: Piece, index: number, { pieces, shared }: Known): Problem[] {
  const by = carrierOf(piece);
  if (by === undefined || shared.has(by)) return [];
  const path = ['pieces', index, 'support', 'by'];
  if (!pieces.has(by)) return [problem('no-such-thing', path, 'the id of another piece', by)];
  return leadsTo(pieces, by, piece.id)
    ? [problem('held-in-a-circle', path, 'a piece that is not held by this one', by)]
    : [];
}

function micProblems(mic: Mic, index: number, { pieces, ownClasses, shared }: Known): Problem[] {
  const at = (...steps: PropertyKey[]): Path => ['mics', index, ...steps];
  const problems = mic.hears.flatMap((id, place) =>
    pieces.has(id) || shared.has(id)
      ? []
      : [problem('no-such-thing', at('hears', place), 'the id of a piece', id)],
  );
  if (!ownClasses.has(mic.micClass) && !isBuiltInMicClass(mic.micClass)) {
    const expected = 'a built-in mic class or the id of an own class';
    problems.push(problem('no-such-thing', at('micClass'), expected, mic.micClass));
  }
  const { mount } = mic;
  if (mount.kind === 'clip' && !shared.has(mount.drum)) {
    const drum = pieces.get(mount.drum);
    if (!(drum && isDrum(drum))) {
      const expected = 'the id of a snare, rack tom or floor tom';
      problems.push(problem('no-such-thing', at('mount', 'drum'), expected, mount.drum));
    }
  }
  if (mount.kind === 'plateInKick' && !shared.has(mount.kick)) {
    const expected = 'the id of a kick drum';
    const isKick = pieces.get(mount.kick)?.kind === 'kick';
    if (!isKick) problems.push(problem('no-such-thing', at('mount', 'kick'), expected, mount.kick));
  }
  return problems;
}

/** The piece that carries this one, if one does. */
export const carrierOf = (piece: Piece): Id | undefined =>
  isStruck(piece) && piece.support.kind === 'held' ? piece.support.by : undefined;

/** Whether following carriers from one piece comes to another. Ends even where the carriers form a circle. */
function leadsTo(pieces: ReadonlyMap<Id, Piece>, from: Id, to: Id): boolean {
  const seen = new Set<Id>();
  let next: Id | undefined = from;
  while (next !== undefined && !seen.has(next)) {
    if (next === to) return true;
    seen.add(next);
    const piece = pieces.get(next);
    next = piece && carrierOf(piece);
  }
  return false;
}
