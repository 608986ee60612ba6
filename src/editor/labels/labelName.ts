/** Letters of a name that a label has room for: a name may be thrice as long, and would lie over half the drawing. The panel gives it whole. */
const MOST = 28;

const letters = new Intl.Segmenter();

/** A name as a label gives it: a very long one ends in `…`. What is read as one letter is not cut in two. */
export function labelName(name: string): string {
  if (name.length <= MOST) return name;
  const parts = Array.from(letters.segment(name), ({ segment }) => segment);
  return parts.length <= MOST
    ? name
    : `${parts
        .slice(0, MOST - 1)
        .join('')
        .trimEnd()}…`;
}
