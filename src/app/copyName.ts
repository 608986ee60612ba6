/** Characters a layout's name may have, as its schema says. */
const NAME_LENGTH = 80;

/** A name within the limit; letters beyond it are left out whole. */
export function boundedName(name: string, length = NAME_LENGTH): string {
  const letters = [...name];
  while (letters.join('').length > length) letters.pop();
  return letters.join('');
}

/** The name of a copy: what it was called, with `(copy)` behind; of a further one `(copy 2)` and so on. */
export function copyName(name: string, number = 1): string {
  const mark = number === 1 ? ' (copy)' : ` (copy ${number})`;
  return `${boundedName(name, NAME_LENGTH - mark.length).trimEnd()}${mark}`;
}

/** The first of these names that no other has: the name itself, unless it is to be that of a copy, then its copies' in turn. */
export function nameBeside(
  name: string,
  others: readonly string[],
  as: 'itself' | 'copy' = 'itself',
): string {
  const taken = new Set(others);
  let next = as === 'itself' ? name : copyName(name);
  for (let number = 1; taken.has(next); number += 1) next = copyName(name, number);
  return next;
}
