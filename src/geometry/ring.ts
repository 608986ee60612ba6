/** The entry at place i of a list read as a ring: -1 is the last, the list's length is the first again. The list is not empty. */
export function at<T>(ring: readonly T[], i: number): T {
  const entry = ring[((i % ring.length) + ring.length) % ring.length];
  if (entry === undefined) throw new RangeError('A ring needs at least one entry.');
  return entry;
}
