import { STAND_CLASSES } from '../../layout/catalogue/standClasses.ts';
import type { Layout } from '../../layout/layout.ts';
import type { PatchSettings, PullItem, PullKind } from '../../layout/patch.ts';
import type { Mm } from '../../units/quantity.ts';
import { PULL_KINDS } from './pullItem.ts';
import { sparesFor } from './spares.ts';

/** One line of the pull list. */
export interface PullLine extends PullItem {
  readonly needed: number;
  readonly spare: number;
  readonly total: number;
}

/** What other rooms know of what is to be taken. */
export interface PullNeeds {
  /** Stock cables by length, mm; a run of two joined cables counts as two. */
  readonly cables: readonly { readonly length: Mm; readonly count: number }[];
  /** Stands that need weighing down. */
  readonly sandbags: number;
}

/** Cables whose length the plan does not know: from a splitter to where its legs go. */
export const SPLIT_LEG = 'splitLeg';

type PullSettings = Pick<PatchSettings, 'splits' | 'spares' | 'tapeRolls'>;

/**
 * Everything to take, in the order of {@link PULL_KINDS}; within a kind in the order of the layout, cables from short to long.
 *
 * P1 Each mic counts by class. One on a clip takes a rim clip by material, one on a stand a mic holder and a stand by class.
 * P2 With mics go one box with its tail, unless the tail has no length. Each split takes a splitter by its number of legs, a
 *    plain Y a Y lead. Every leg of a splitter takes one cable more, of a Y lead every leg to another place: how long, only
 *    the stage tells.
 * P3 The parts of stands are those of the stands taken, spare ones included: every stand has a base, those with a boom a boom,
 *    those whose class has one a counterweight.
 * P4 Spares by rule; parts have those of their stands.
 * P5 Counts that are not whole numbers are rounded up, negative ones count for nothing.
 */
export function pullList(
  { mics, box }: Pick<Layout, 'mics' | 'box'>,
  { splits, spares, tapeRolls }: PullSettings,
  { cables, sandbags }: PullNeeds,
): readonly PullLine[] {
  const counts = new Map<string, PullItem & { count: number }>();
  const count = (kind: PullKind, which: string, more = 1): void => {
    const item = counts.get(`${kind}:${which}`) ?? { kind, which, count: 0 };
    counts.set(`${kind}:${which}`, { ...item, count: item.count + Math.max(0, Math.ceil(more)) });
  };
  for (const { micClass, mount } of mics) {
    count('mic', micClass);
    if (mount.kind === 'clip') count('rimClip', mount.material);
    if (mount.kind === 'stand') {
      count('micHolder', '');
      count('stand', mount.stand);
    }
  }
  for (const row of cables.toSorted((a, b) => a.length - b.length)) {
    count('cable', String(row.length), row.count);
  }
  if (mics.length > 0) {
    count('box', String(box.inputs));
    if (box.tail > 0) count('tail', String(box.tail));
  }
  for (const { kind, legs } of splits) {
    count(kind === 'y' ? 'yLead' : 'splitter', String(legs.length));
    const ends = kind === 'y' ? legs.filter(({ to }) => to === 'other') : legs;
    count('cable', SPLIT_LEG, ends.length);
  }
  count('sandbag', '', sandbags);
  count('tape', '', tapeRolls);
  const lines = [...counts.values()].map((item) =>
    lineOf(item, item.count, sparesFor(item.count, item.kind, spares)),
  );
  return inOrder([...lines, ...partLines(lines)].filter(({ total }) => total > 0));
}

const lineOf = ({ kind, which }: PullItem, needed: number, spare: number): PullLine => ({
  kind,
  which,
  needed,
  spare,
  total: needed + spare,
});

function partLines(lines: readonly PullLine[]): readonly PullLine[] {
  const stands = lines.filter(({ kind }) => kind === 'stand');
  const parts = new Map<string, PullLine>();
  for (const stand of stands) {
    for (const part of partsOf(stand.which)) {
      const key = `${part.kind}:${part.which}`;
      const before = parts.get(key) ?? lineOf(part, 0, 0);
      parts.set(key, lineOf(part, before.needed + stand.needed, before.spare + stand.spare));
    }
  }
  return [...parts.values()];
}

function partsOf(standClass: string): readonly PullItem[] {
  const spec = STAND_CLASSES.find((entry) => entry.standClass === standClass);
  if (!spec) return [];
  const { base, boomMax, counterweightMass } = spec;
  return [
    { kind: 'base', which: base },
    ...(boomMax > 0 ? [{ kind: 'boom' as const, which: '' }] : []),
    ...(counterweightMass > 0 ? [{ kind: 'counterweight' as const, which: '' }] : []),
  ];
}

const inOrder = (lines: readonly PullLine[]): readonly PullLine[] =>
  lines.toSorted((a, b) => PULL_KINDS.indexOf(a.kind) - PULL_KINDS.indexOf(b.kind));
