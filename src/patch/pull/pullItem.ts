/**
 * What is counted. `base`, `boom` and `counterweight` are the parts of the stands, for stands that travel in parts; `sandbag` is
 * what stands that may tip are weighed down with; `micHolder` holds a mic on a stand.
 */
export type PullKind =
  | 'mic'
  | 'rimClip'
  | 'micHolder'
  | 'stand'
  | 'base'
  | 'boom'
  | 'counterweight'
  | 'sandbag'
  | 'cable'
  | 'box'
  | 'tail'
  | 'splitter'
  | 'yLead'
  | 'tape';

export const PULL_KINDS: readonly PullKind[] = [
  'mic',
  'rimClip',
  'micHolder',
  'stand',
  'base',
  'boom',
  'counterweight',
  'sandbag',
  'cable',
  'box',
  'tail',
  'splitter',
  'yLead',
  'tape',
];

/**
 * One sort of thing. `which` tells sorts of a kind apart: a mic's or stand's class, a clip's material, `tripod` or `round`, a
 * length in mm, a number of inputs or legs; empty where there is only one sort.
 */
export interface PullItem {
  readonly kind: PullKind;
  readonly which: string;
}

/** How many of a sort were carried out to the stage, and how many came back. */
export interface PullTick extends PullItem {
  readonly out: number;
  readonly back: number;
}

export const isSameItem = (a: PullItem, b: PullItem): boolean =>
  a.kind === b.kind && a.which === b.which;
