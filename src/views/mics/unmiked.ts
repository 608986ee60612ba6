import { type MicGroup, micGroups } from '../../layout/catalogue/offered/offeredMics.ts';
import type { Layout } from '../../layout/layout.ts';

/**
 * The groups of pieces that no mic is meant for yet: a piece by itself needs a mic whose own source it is; a half of the
 * cymbals is covered when mics for several pieces hear each of them.
 */
export function unmiked(layout: Layout): readonly MicGroup[] {
  const own = new Set(layout.mics.filter((mic) => mic.hears.length < 3).map((mic) => mic.hears[0]));
  const shared = new Set(
    layout.mics.filter((mic) => mic.hears.length > 1).flatMap((mic) => mic.hears),
  );
  return micGroups(layout).filter(({ hears }) =>
    hears.length === 1 ? !hears.some((id) => own.has(id)) : !hears.every((id) => shared.has(id)),
  );
}
