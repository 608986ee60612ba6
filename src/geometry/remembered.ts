/** A function of objects that remembers what it gave for each: same object, same answer. */
export function remembered<Key extends object, Value>(
  make: (key: Key) => Value,
): (key: Key) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    const found = known.get(key);
    if (found) return found.value;
    const value = make(key);
    known.set(key, { value });
    return value;
  };
}

/** Whether two lists have the same entries in the same places. */
export const isSameList = (p: readonly unknown[], q: readonly unknown[]): boolean =>
  p === q || (p.length === q.length && p.every((entry, i) => entry === q[i]));

/** A function that answers with the list it gave last where a new one has the same entries. */
export function sameList<Entry>(): (list: readonly Entry[]) => readonly Entry[] {
  let last: readonly Entry[] = [];
  return (list) => {
    if (!isSameList(list, last)) last = list;
    return last;
  };
}
