/**
 * The numbered rules of a model, where they are defined: a comment that begins with the number (`M7 A side-address body ...`) or with
 * the word (`Rule C3: ...`, `Rules L1 to L4 ...`). A rule that is only mentioned, `(rule C1)`, is not defined there.
 */
export const rulesDefined = (text: string): ReadonlySet<string> =>
  new Set(
    text.split('\n').flatMap((line) => {
      const said = COMMENT.exec(line)?.[1];
      if (said === undefined) return [];
      const ruled = /^Rules? (?=[A-Z]\d)/.exec(said);
      const bare = ruled ? said.slice(ruled[0].length) : said;
      return numbersAtStart(bare);
    }),
  );

const COMMENT = /^\s*(?:\/\*\*|\*|\/\/)\s+(.*)$/;

/** `L1`, `L1 to L4`, `T1-T3`, `A2 and A3` at the beginning of a text, each number by itself. */
function numbersAtStart(text: string): readonly string[] {
  const found = /^([A-Z])(\d{1,2})(?: (to|and) [A-Z](\d{1,2}))?(?![\w-])/.exec(text);
  return found ? numbered(found[1] ?? '', Number(found[2]), Number(found[4] ?? found[2])) : [];
}

/** All rules that a test quotes anywhere, ranges taken apart. */
export const rulesQuoted = (text: string): ReadonlySet<string> =>
  new Set(
    [...text.matchAll(/\b([A-Z])(\d{1,2})(?:(?: to |-)[A-Z]?(\d{1,2}))?\b/g)].flatMap(
      ([, letter = '', first, last]) => numbered(letter, Number(first), Number(last ?? first)),
    ),
  );

const numbered = (letter: string, first: number, last: number): readonly string[] =>
  Array.from({ length: Math.max(1, last - first + 1) }, (_, k) => `${letter}${first + k}`);
