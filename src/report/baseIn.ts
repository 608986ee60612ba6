import type { Deck } from '../layout/deck.ts';
import { moveMicBase } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { toDeck, toKit } from '../rig/deckFrame.ts';
import { aboutOf, isBetter } from '../rig/freeTurn.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import { placeMic } from '../rig/placeMic.ts';
import { createStandingFinder } from '../rig/standing/findStanding.ts';
import { micOffDeck, type Rest, restsOfMic } from '../rig/standing/offDeck.ts';
import { FIRM, tippingOf } from '../rig/tipping.ts';
import type { Mm } from '../units/quantity.ts';

/** The base of a mic's stand brought in from the deck's edge, its tip kept. */
export interface BaseMove {
  readonly kind: 'base';
  readonly mic: Id;
  /** Where the base is asked to go, kit frame. */
  readonly to: { readonly x: Mm; readonly y: Mm };
  readonly by: Mm;
}

/** What is worse by less is rounding. */
const SAME = 1e-6;

/**
 * Y7 The shortest way straight in, in whole mm across and along the deck, that brings all of a stand's feet onto it. It is offered only where
 *    the boom then reaches as before, the stand stands as firmly or firm enough, nothing new is in its way, and `serves` holds.
 * Null where there is none, and for what does not stand on a base of its own.
 */
export function baseIn(
  layout: Layout,
  rig: Rig,
  id: Id,
  serves: (placed: PlacedMic) => boolean,
): BaseMove | null {
  const before = rig.mics.find(({ mic }) => mic.id === id);
  if (before?.mic.mount.kind !== 'stand') return null;
  const { base } = before.mic.mount;
  const shift = shiftIn(restsOfMic(before), layout.deck);
  if (!shift) return null;
  const from = toDeck(layout.deck, base);
  const to = toKit(layout.deck, { x: from.x + shift.x, y: from.y + shift.y });
  const moved = moveMicBase(layout, id, to).mics.find((mic) => mic.id === id);
  if (!moved) return null;
  const after = placeMic(moved, layout);
  const find = createStandingFinder();
  const mics = rig.mics.map((placed) => (placed === before ? after : placed));
  const [was, is] = [rig, { ...rig, mics }].map((one) => aboutOf(find(one, layout.deck), id));
  const holds =
    micOffDeck(after, layout.deck).length === 0 &&
    isBetter(was ?? [], is ?? []) &&
    reachesAsBefore(before, after) &&
    isAsFirm(before, after) &&
    serves(after);
  return holds ? { kind: 'base', mic: id, to, by: Math.hypot(shift.x, shift.y) } : null;
}

const reachesAsBefore = (before: PlacedMic, after: PlacedMic): boolean =>
  (after.stand?.beyondReach ?? 0) <= (before.stand?.beyondReach ?? 0) + SAME;

function isAsFirm(before: PlacedMic, after: PlacedMic): boolean {
  const factor = (placed: PlacedMic) => tippingOf(placed)?.factor ?? FIRM;
  return factor(after) >= Math.min(FIRM, factor(before)) - SAME;
}

/** How far all of these must go for the deck to hold them, deck frame; undefined where it is too small, or nothing must go. */
function shiftIn(rests: readonly Rest[], deck: Deck): { x: Mm; y: Mm } | undefined {
  const on = rests.map(({ spot, radius }) => ({ at: toDeck(deck, spot), radius }));
  const x = within(
    on.map(({ at, radius }) => [at.x - radius, at.x + radius]),
    deck.width / 2,
  );
  const y = within(
    on.map(({ at, radius }) => [at.y - radius, at.y + radius]),
    deck.depth / 2,
  );
  return x === undefined || y === undefined || (x === 0 && y === 0) ? undefined : { x, y };
}

/** The shift in whole mm that brings all stretches between `-half` and `half`; undefined where they are too wide for it. */
function within(stretches: readonly (readonly [Mm, Mm])[], half: Mm): Mm | undefined {
  const low = Math.min(...stretches.map(([from]) => from));
  const high = Math.max(...stretches.map(([, to]) => to));
  const up = Math.ceil(Math.max(0, -half - low));
  const down = Math.ceil(Math.max(0, high - half));
  if (up > 0 && down > 0) return undefined;
  const shift = up - down;
  return low + shift >= -half && high + shift <= half ? shift : undefined;
}
