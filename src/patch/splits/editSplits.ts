import type { Id } from '../../layout/fields.ts';
import type { Leg, PatchSettings, Split } from '../../layout/patch.ts';

/** Edits of splits: pure, and the same object when they have no effect. A wrong split can be kept: facts say what is wrong. */

/** Adds a split, the last one; without effect when its id is taken. */
export const addSplit = (patch: PatchSettings, split: Split): PatchSettings =>
  patch.splits.some(({ id }) => id === split.id)
    ? patch
    : { ...patch, splits: [...patch.splits, split] };

export function removeSplit(patch: PatchSettings, id: Id): PatchSettings {
  const splits = patch.splits.filter((split) => split.id !== id);
  return splits.length === patch.splits.length ? patch : { ...patch, splits };
}

/** Changes what a split takes its signal from, or its kind. A plain Y has no transformer: its legs become direct. */
export const changeSplit = (
  patch: PatchSettings,
  id: Id,
  change: Partial<Pick<Split, 'of' | 'kind'>>,
): PatchSettings =>
  changed(patch, id, (split) => {
    const next = { ...split, ...change };
    if (next.of === split.of && next.kind === split.kind) return split;
    if (next.kind !== 'y' || split.kind === 'y') return next;
    return { ...next, legs: next.legs.map((leg) => ({ ...leg, connection: 'direct' })) };
  });

export const addLeg = (patch: PatchSettings, id: Id, leg: Leg): PatchSettings =>
  changed(patch, id, (split) => ({ ...split, legs: [...split.legs, leg] }));

/** Puts a leg in the place of another, counted from 0. */
export const replaceLeg = (patch: PatchSettings, id: Id, index: number, leg: Leg): PatchSettings =>
  changed(patch, id, (split) =>
    split.legs[index] === undefined ? split : { ...split, legs: split.legs.with(index, leg) },
  );

export const removeLeg = (patch: PatchSettings, id: Id, index: number): PatchSettings =>
  changed(patch, id, (split) =>
    split.legs[index] === undefined ? split : { ...split, legs: split.legs.toSpliced(index, 1) },
  );

function changed(patch: PatchSettings, id: Id, change: (split: Split) => Split): PatchSettings {
  const index = patch.splits.findIndex((split) => split.id === id);
  const before = patch.splits[index];
  if (!before) return patch;
  const after = change(before);
  return after === before ? patch : { ...patch, splits: patch.splits.with(index, after) };
}
