/**
 * As `map`, one entry after the other. Node's and Chromium's engine makes another kind of list in `map` once it has compiled the call to fast code, and all fast
 * code that has met only the first kind is then thrown away and compiled again: this keeps to one kind, where many analyses follow each other.
 */
export function listed<Thing, Made>(
  things: readonly Thing[],
  make: (thing: Thing, i: number) => Made,
): Made[] {
  const made: Made[] = [];
  for (let i = 0; i < things.length; i += 1) made.push(make(things[i] as Thing, i));
  return made;
}
