import { type Fields, isPlain } from './plainData.ts';

/** How plain data came of earlier plain data, told by the parts that differ; itself plain data that can go by message. */
export type Change =
  /** Nothing changed. */
  | { readonly kind: 'same' }
  /** This stands in its place. */
  | { readonly kind: 'new'; readonly value: unknown }
  /** An object: what became of some of its fields, and which are gone. */
  | {
      readonly kind: 'fields';
      readonly fields: readonly (readonly [string, Change])[];
      readonly gone: readonly string[];
    }
  /** A list so long: at some places another entry than before, made of the one that stood at `from`. */
  | {
      readonly kind: 'list';
      readonly length: number;
      readonly entries: readonly EntryChange[];
    };

interface EntryChange {
  readonly at: number;
  readonly from: number;
  readonly change: Change;
}

const same: Change = { kind: 'same' };

/**
 * What changed from some data to the next. What both share, as the very same object, is not looked into.
 *
 * @param before Data of any shape.
 * @param now Plain data: objects, lists and primitive values. Anything else in it counts as changed.
 */
export function changeFrom(before: unknown, now: unknown): Change {
  if (Object.is(before, now)) return same;
  if (Array.isArray(now)) {
    return Array.isArray(before) ? listChange(before, now) : { kind: 'new', value: now };
  }
  return isPlain(before) && isPlain(now) ? fieldsChange(before, now) : { kind: 'new', value: now };
}

/**
 * The data after a change.
 *
 * @param before The data that the change was told from, or data equal to it.
 * @returns Data equal to what the change was told of; each part that did not change is the very object that it was in `before`.
 */
export function changed(before: unknown, change: Change): unknown {
  switch (change.kind) {
    case 'same':
      return before;
    case 'new':
      return change.value;
    case 'fields': {
      const made: Record<string, unknown> = { ...(before as Fields) };
      for (const key of change.gone) delete made[key];
      for (const [key, part] of change.fields) made[key] = changed(made[key], part);
      return made;
    }
    case 'list': {
      const list = before as readonly unknown[];
      const made = list.slice(0, change.length);
      for (const { at, from, change: part } of change.entries) made[at] = changed(list[from], part);
      return made;
    }
  }
}

function fieldsChange(before: Fields, now: Fields): Change {
  const fields = Object.keys(now).flatMap((key) => {
    const change: Change = Object.hasOwn(before, key)
      ? changeFrom(before[key], now[key])
      : { kind: 'new', value: now[key] };
    return change.kind === 'same' ? [] : [[key, change] as const];
  });
  const gone = Object.keys(before).filter((key) => !Object.hasOwn(now, key));
  return fields.length + gone.length === 0 ? same : { kind: 'fields', fields, gone };
}

/** Entries are set beside those at the same place; in a longer or shorter list also beside those as far from its end. */
function listChange(before: readonly unknown[], now: readonly unknown[]): Change {
  const { length } = now;
  const longer = length - before.length;
  const entries = now.flatMap((entry, at): readonly EntryChange[] => {
    const change: Change =
      at < before.length ? changeFrom(before[at], entry) : { kind: 'new', value: entry };
    if (change.kind === 'same') return [];
    const from = at - longer;
    const isMoved = longer !== 0 && from >= 0 && changeFrom(before[from], entry).kind === 'same';
    return [isMoved ? { at, from, change: same } : { at, from: at, change }];
  });
  return entries.length === 0 && longer === 0 ? same : { kind: 'list', length, entries };
}
