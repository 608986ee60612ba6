import { type MicGroup, micGroups } from '../../layout/catalogue/offered/offeredMics.ts';
import { areUnderOverheads } from '../../layout/catalogue/offered/overheads.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';

/**
 * The groups of pieces that no mic is meant for yet: a piece by itself needs a mic whose own source it is; a half of the
 * cymbals is covered when overheads, whatever their names, hear at least half of those that are in this half alone.
 */
export function unmiked(layout: Layout): readonly MicGroup[] {
  const own = new Set(layout.mics.filter((mic) => mic.hears.length < 3).map((mic) => mic.hears[0]));
  const groups = micGroups(layout);
  const halves = groups.filter(({ hears }) => hears.length > 1);
  const inAll = (id: Id) => halves.length > 1 && halves.every(({ hears }) => hears.includes(id));
  return groups.filter(({ hears }) => {
    if (hears.length === 1) return !hears.some((id) => own.has(id));
    const alone = hears.filter((id) => !inAll(id));
    return !areUnderOverheads(layout, alone);
  });
}
