import { changeMount, moveMicTip } from '../../../layout/edit/mics.ts';
import type { Id } from '../../../layout/fields.ts';
import type { Layout } from '../../../layout/layout.ts';
import type { OverheadSpot } from '../../../report/sound.ts';
import type { Mm } from '../../../units/quantity.ts';

/** Fronts of mics on stands raised or lowered to a height above the deck, each over its spot. */
export const raiseOverheads = (layout: Layout, ids: readonly Id[], z: Mm): Layout =>
  ids.reduce((now, id) => {
    const mount = now.mics.find((mic) => mic.id === id)?.mount;
    return mount?.kind === 'stand' ? moveMicTip(now, id, { ...mount.tip, z }) : now;
  }, layout);

/** One mic put and aimed like an arrangement's; its stand comes along on the plan. */
export const placeOverhead = (
  layout: Layout,
  id: Id,
  { tip, azimuth, pitch }: OverheadSpot,
): Layout =>
  changeMount(layout, id, (mount) => {
    if (mount.kind !== 'stand') return mount;
    const base = {
      x: mount.base.x + tip.x - mount.tip.x,
      y: mount.base.y + tip.y - mount.tip.y,
    };
    return { ...mount, base, tip, azimuth, pitch };
  });

/** The outermost two of some mics on stands, left and right of the player; undefined for fewer than two. */
export function outermost(
  { mics }: Pick<Layout, 'mics'>,
  ids: readonly Id[],
): readonly [left: Id, right: Id] | undefined {
  const across = mics
    .flatMap(({ id, mount }) =>
      mount.kind === 'stand' && ids.includes(id) ? [{ id, x: mount.tip.x }] : [],
    )
    .toSorted((p, q) => p.x - q.x);
  const [left, right] = [across[0], across.at(-1)];
  return left && right && left !== right ? [left.id, right.id] : undefined;
}

/** Heights over the highest cymbal that an overhead is moved to. */
export const HEIGHTS = { low: 400, high: 1500 } as const;
