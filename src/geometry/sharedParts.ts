import { type Fields, isPlain } from './plainData.ts';

/**
 * Plain data, made of what was there before as far as the two are equal: what comes by message is never the same object twice, and what
 * is equal stays the same object here, so that memories by identity hold and nothing of it is drawn again.
 *
 * @param before Data of any shape.
 * @param now Plain data: objects, lists and primitive values. Anything else in it counts as changed.
 * @returns A value equal to `now`; `before` itself when all of it is equal.
 */
export function sharedParts<Value>(before: unknown, now: Value): Value {
  return shared(before, now) as Value;
}

function shared(before: unknown, now: unknown): unknown {
  if (Object.is(before, now)) return before;
  if (Array.isArray(now)) return Array.isArray(before) ? sharedList(before, now) : now;
  return isPlain(now) && isPlain(before) ? sharedFields(before, now) : now;
}

function sharedFields(before: Fields, now: Fields): Fields {
  const keys = Object.keys(now);
  let isSame = keys.length === Object.keys(before).length;
  const made: Record<string, unknown> = {};
  for (const key of keys) {
    const part = shared(before[key], now[key]);
    isSame &&= Object.is(part, before[key]) && key in before;
    made[key] = part;
  }
  return isSame ? before : made;
}

/** Entries are set beside those at the same place; in a longer or shorter list also beside those as far from its end. */
function sharedList(before: readonly unknown[], now: readonly unknown[]): readonly unknown[] {
  const longer = now.length - before.length;
  const made = now.map((entry, i) => {
    const first = shared(before[i], entry);
    return longer === 0 || Object.is(first, before[i]) ? first : shared(before[i - longer], entry);
  });
  return longer === 0 && made.every((entry, i) => Object.is(entry, before[i])) ? before : made;
}
