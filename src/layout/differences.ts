/** What JSON holds at the end of a path. Undefined: nothing is there. */
export type Leaf = string | number | boolean | null | undefined;

/** One field that is not the same: `stick.length`, `support.turn`. Entries of lists are named by their place. */
export interface Difference {
  readonly path: string;
  readonly before: Leaf;
  readonly after: Leaf;
}

/** Every field in which two plain values differ, in the order of the first's fields. Empty exactly when they are equal as JSON. */
export function differences(before: unknown, after: unknown, path = ''): readonly Difference[] {
  const [was, is] = [fieldsOf(before), fieldsOf(after)];
  if (!was && !is) {
    return sameLeaf(before, after) ? [] : [{ path, before: leaf(before), after: leaf(after) }];
  }
  // A list and a record, or one of either and a leaf: what was there goes, and what is there comes.
  if (!was || !is || Array.isArray(before) !== Array.isArray(after)) {
    return [
      ...(was ? ends(before, path, 'before') : [{ path, before: leaf(before), after: undefined }]),
      ...(is ? ends(after, path, 'after') : [{ path, before: undefined, after: leaf(after) }]),
    ];
  }
  const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])];
  return keys.flatMap((key) =>
    differences(was[key], is[key], path === '' ? key : `${path}.${key}`),
  );
}

/** All that is in a value, as something that came or went; a value with nothing in it is told by itself. */
function ends(value: unknown, path: string, side: 'before' | 'after'): readonly Difference[] {
  const empty = Array.isArray(value) ? [] : {};
  const inside =
    side === 'before' ? differences(value, empty, path) : differences(empty, value, path);
  if (inside.length > 0) return inside;
  const text = Array.isArray(value) ? '[]' : '{}';
  return [{ path, before: undefined, after: undefined, [side]: text }];
}

type Fields = Readonly<Record<string, unknown>>;

const fieldsOf = (value: unknown): Fields | undefined =>
  typeof value === 'object' && value !== null ? { ...value } : undefined;

/** As JSON: 0 and -0 are one number. */
const sameLeaf = (p: unknown, q: unknown): boolean => p === q;

function leaf(value: unknown): Leaf {
  switch (typeof value) {
    case 'string':
    case 'number':
    case 'boolean':
    case 'undefined':
      return value;
    default:
      return null;
  }
}
