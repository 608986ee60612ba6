/** Characters a layout's name may have, as its schema says. */
const NAME_LENGTH = 80;

/** A name within the limit; letters beyond it are left out whole. */
export function boundedName(name: string, length = NAME_LENGTH): string {
  const letters = [...name];
  while (letters.join('').length > length) letters.pop();
  return letters.join('');
}

/** The name of a copy: what it was called, with `(copy)` behind. */
export function copyName(name: string): string {
  const mark = ' (copy)';
  return `${boundedName(name, NAME_LENGTH - mark.length).trimEnd()}${mark}`;
}
