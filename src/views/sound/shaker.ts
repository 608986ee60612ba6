import { freshId } from '../../layout/edit/ids.ts';
import { changePatch } from '../../layout/edit/patch.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Leg } from '../../layout/patch.ts';
import { addLeg, addSplit } from '../../patch/splits/editSplits.ts';
import { splitOf, usualLeg, usualSplit } from '../../patch/splits/split.ts';

/** What a seat shaker's leg is called. */
const SHAKER = 'Seat shaker';

/** A mic's signal that goes to a seat shaker. */
export interface ShakerFeed {
  readonly mic: Id;
  readonly leg: Leg;
}

/** The first split of some mics with a leg that says it is a shaker's; undefined where none does. */
export function shakerFeed(
  { patch }: Pick<Layout, 'patch'>,
  mics: readonly Id[],
): ShakerFeed | undefined {
  return patch.splits
    .filter(({ of }) => mics.includes(of))
    .flatMap(({ of, legs }) => legs.map((leg) => ({ mic: of, leg })))
    .find(({ leg }) => leg.to === 'other' && /shaker/i.test(leg.name));
}

/** A layout in which a mic's signal also goes to a seat shaker: by one more leg of its split, or by a split of its own. */
export const withShakerFeed = (layout: Layout, mic: Id): Layout =>
  changePatch(layout, (patch) => {
    const split = splitOf(patch.splits, mic);
    return split
      ? addLeg(patch, split.id, usualLeg(split.kind, SHAKER))
      : addSplit(patch, usualSplit(freshId(layout, 'split'), mic, SHAKER));
  });
