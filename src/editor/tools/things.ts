import type { Layout } from '../../layout/layout.ts';
import { type Selection, sameSelection } from '../../session/selection.ts';

/** Everything that can be selected, in the order in which the Tab key visits it. */
export const thingsOf = (layout: Layout): readonly Selection[] => [
  ...layout.mics.map(({ id }): Selection => ({ kind: 'mic', id })),
  ...layout.pieces.map(({ id }): Selection => ({ kind: 'piece', id })),
  { kind: 'box' },
  { kind: 'player' },
  { kind: 'deck' },
];

/** The next thing or the one before; null past either end, where the Tab key leaves the plan. Going back from nothing leaves it too. */
export function neighbour(
  layout: Layout,
  selection: Selection | null,
  by: 1 | -1,
): Selection | null {
  const things = thingsOf(layout);
  const at = things.findIndex((thing) => sameSelection(thing, selection));
  if (at < 0) return (by > 0 ? things[0] : undefined) ?? null;
  return things[at + by] ?? null;
}
