import { type PullItem, type PullKind, pullKindField } from '../../layout/patch.ts';

/** In the order of the pull list. */
export const PULL_KINDS: readonly PullKind[] = pullKindField.options;

export const isSameItem = (a: PullItem, b: PullItem): boolean =>
  a.kind === b.kind && a.which === b.which;
