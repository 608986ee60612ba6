import type { Degrees, Mm } from '../../units/quantity.ts';
import type { Box, Cabling } from '../cabling.ts';
import type { Deck, Stairs } from '../deck.ts';
import type { Layout } from '../layout.ts';
import type { BodyOverrides, Player } from '../player.ts';
import type { Venue } from '../venue.ts';
import { withPart } from './change.ts';
import { tidy, tidyAzimuth, tidySpot } from './tidy.ts';

/** Edits of everything that is neither a piece nor a mic. */

export const renameLayout = (layout: Layout, name: string): Layout =>
  withPart(layout, 'name', name);

export const setUnits = (layout: Layout, units: Layout['units']): Layout =>
  withPart(layout, 'units', units);

/** Sets the clearance below which a mic is tight. */
export const setMargin = (layout: Layout, margin: Mm): Layout => withPart(layout, 'margin', margin);

export const setVenue = (layout: Layout, patch: Partial<Venue>): Layout =>
  withPart(layout, 'venue', { ...layout.venue, ...patch });

export const setPlayer = (layout: Layout, patch: Partial<Omit<Player, 'body' | 'stick'>>): Layout =>
  withPart(layout, 'player', { ...layout.player, ...patch });

/** Gives the layout another player whole, as from another layout. */
export const takePlayer = (layout: Layout, player: Player): Layout =>
  withPart(layout, 'player', player);

export const setStick = (layout: Layout, patch: Partial<Player['stick']>): Layout =>
  withPart(layout, 'player', { ...layout.player, stick: { ...layout.player.stick, ...patch } });

/** Sets measured body lengths; undefined gives a length back to the regression on stature. */
export const setBody = (
  layout: Layout,
  patch: { readonly [Part in keyof BodyOverrides]?: Mm | undefined },
): Layout => {
  const given = Object.entries({ ...layout.player.body, ...patch }).filter(
    ([, value]) => value !== undefined,
  );
  return withPart(layout, 'player', { ...layout.player, body: Object.fromEntries(given) });
};

/** Sets the deck's size; the kit and the stairs stay where they are. */
export const setDeck = (
  layout: Layout,
  patch: Partial<Pick<Deck, 'width' | 'depth' | 'height'>>,
): Layout => withPart(layout, 'deck', { ...layout.deck, ...patch });

/** Moves and turns the whole kit, mics included, on its deck (deck frame). */
export function moveKit(
  layout: Layout,
  to: { readonly x?: Mm; readonly y?: Mm; readonly turn?: Degrees },
): Layout {
  const { kit } = layout.deck;
  const spot = tidySpot(to.x ?? kit.x, to.y ?? kit.y);
  const turn = tidyAzimuth(to.turn ?? kit.turn);
  return withPart(layout, 'deck', { ...layout.deck, kit: { ...spot, turn } });
}

export const addStairs = (layout: Layout, stairs: Stairs): Layout =>
  withPart(layout, 'deck', { ...layout.deck, stairs: [...layout.deck.stairs, stairs] });

export function changeStairs(layout: Layout, index: number, patch: Partial<Stairs>): Layout {
  const before = layout.deck.stairs[index];
  if (!before) return layout;
  const stairs = layout.deck.stairs.with(index, { ...before, ...patch });
  return withPart(layout, 'deck', { ...layout.deck, stairs });
}

export const removeStairs = (layout: Layout, index: number): Layout =>
  withPart(layout, 'deck', {
    ...layout.deck,
    stairs: layout.deck.stairs.filter((_, place) => place !== index),
  });

/** Moves the box (deck frame); its inputs keep facing the same way unless told otherwise. */
export const moveBox = (
  layout: Layout,
  to: { readonly x: Mm; readonly y: Mm; readonly turn?: Degrees },
): Layout =>
  withPart(layout, 'box', {
    ...layout.box,
    ...tidySpot(to.x, to.y),
    turn: tidyAzimuth(to.turn ?? layout.box.turn),
  });

export const setBox = (layout: Layout, patch: Partial<Pick<Box, 'inputs' | 'tail'>>): Layout =>
  withPart(layout, 'box', { ...layout.box, ...patch });

export const setCabling = (layout: Layout, patch: Partial<Omit<Cabling, 'stock'>>): Layout =>
  withPart(layout, 'cabling', { ...layout.cabling, ...patch });

/** Sets how many cables of a length are carried; none takes the length off the list. The list stays sorted by length. */
export function setStock(layout: Layout, length: Mm, count: number): Layout {
  const others = layout.cabling.stock.filter((row) => row.length !== length);
  const rows = count > 0 ? [...others, { length: tidy(length), count }] : others;
  const stock = rows.toSorted((a, b) => a.length - b.length);
  return withPart(layout, 'cabling', { ...layout.cabling, stock });
}
