import { crossing } from '../geometry/planSegments.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Box } from '../layout/cabling.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { inputsInRow } from '../rig/boxShape.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Rig } from '../rig/placed.ts';
import { floorObstacles } from './floorObstacles.ts';
import { createLayWay, type LaidWay } from './layWay.ts';

type Spot = Vec2<'deck'>;

/**
 * Box inputs with which cables cross each other least, for every mic of a layout.
 *
 * N1 Shortest ways to one place never cross: they make a tree. Every mic is led to the middle of the box's side, and the mics are
 *    taken in the order in which their branches leave that tree, from the left end of the row to its right.
 * N2 The inputs they get are 1 up to the number of mics, from left to right; of two that lie one behind the other, the front
 *    row's first. Mics beyond the box's inputs are numbered on: that there are too many is for a finding to say.
 * N3 Inputs are not one place: then any two mics change theirs as long as fewer of the real ways cross.
 */
export function leastCrossing(layout: Layout, rig: Rig): ReadonlyMap<Id, number> {
  const lay = createLayWay(layout, floorObstacles(layout, rig));
  const branches = rig.mics.map((placed) => {
    const start = toDeck(layout.deck, placed.deckPoint);
    return { mic: placed.mic.id, start, fromBox: lay(start, null).route.toReversed() };
  });
  branches.sort((p, q) => compare(p.fromBox, q.fromBox));
  const inputs = leftToRight(layout.box, branches.length);
  const cables = branches.map(
    ({ mic, start }, place) => new Cable(mic, inputs[place] ?? place + 1, (to) => lay(start, to)),
  );
  untangle(cables);
  return new Map(cables.map(({ mic, input }) => [mic, input]));
}

/** How often all pairs are tried. */
const MOST_ROUNDS = 4;

/** N3 */
function untangle(cables: readonly Cable[]): void {
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let changed = false;
    for (const [i, p] of cables.entries()) {
      for (const q of cables.slice(i + 1)) {
        const before = crossingsOf(p, q, cables);
        if (before === 0) continue;
        exchange(p, q);
        if (crossingsOf(p, q, cables) < before) changed = true;
        else exchange(p, q);
      }
    }
    if (!changed) return;
  }
}

/** A cable and its ways to inputs, each laid once. */
class Cable {
  readonly mic: Id;
  input: number;
  readonly #lay: (input: number) => LaidWay;
  readonly #laid = new Map<number, LaidWay>();

  constructor(mic: Id, input: number, lay: (input: number) => LaidWay) {
    this.mic = mic;
    this.input = input;
    this.#lay = lay;
  }

  get way(): LaidWay {
    const known = this.#laid.get(this.input);
    if (known) return known;
    const laid = this.#lay(this.input);
    this.#laid.set(this.input, laid);
    return laid;
  }
}

function exchange(p: Cable, q: Cable): void {
  const { input } = p;
  p.input = q.input;
  q.input = input;
}

/** How often two cables cross each other and the rest. */
function crossingsOf(p: Cable, q: Cable, cables: readonly Cable[]): number {
  let count = crossings(p.way, q.way);
  for (const other of cables) {
    if (other === p || other === q) continue;
    count += crossings(p.way, other.way) + crossings(q.way, other.way);
  }
  return count;
}

/** How often the lines of two ways cross; what only touches does not. */
function crossings(
  { route: p }: Pick<LaidWay, 'route'>,
  { route: q }: Pick<LaidWay, 'route'>,
): number {
  let count = 0;
  for (const [i, a] of p.entries()) {
    const before = p[i - 1];
    if (!before) continue;
    for (const [k, b] of q.entries()) {
      const from = q[k - 1];
      if (from && crossing<'deck'>([before, a], [from, b])) count += 1;
    }
  }
  return count;
}

/** N2 */
function leftToRight(box: Box, mics: number): readonly number[] {
  const row = inputsInRow(box);
  const column = (input: number): number => (input - 1) % row;
  return Array.from({ length: Math.min(mics, box.inputs) }, (_, i) => i + 1).sort(
    (p, q) => column(p) - column(q) || p - q,
  );
}

/** N1: which of two ways from the box branches off more to the left, as seen by who looks at the inputs: that one is first. */
function compare(p: readonly Spot[], q: readonly Spot[]): number {
  let parted = 0;
  while (parted < p.length && parted < q.length && isSame(p[parted], q[parted])) parted += 1;
  const at = p[parted - 1];
  const from = p[parted - 2];
  const ahead = p[parted];
  const other = q[parted];
  if (!at || !from || !ahead || !other) return 0;
  return turnFrom(from, at, ahead) - turnFrom(from, at, other);
}

/** The direction from `at` to another place, anticlockwise from the direction back to where the way came from. */
function turnFrom(from: Spot, at: Spot, to: Spot): number {
  const back = Math.atan2(from.y - at.y, from.x - at.x);
  const on = Math.atan2(to.y - at.y, to.x - at.x);
  return (on - back + 4 * Math.PI) % (2 * Math.PI);
}

const isSame = (p: Spot | undefined, q: Spot | undefined): boolean =>
  p?.x === q?.x && p?.y === q?.y;
