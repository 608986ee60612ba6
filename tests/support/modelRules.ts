import { parseSync } from 'vite';

/**
 * The numbered rules of a model, where they are defined:
 * - a comment, or an entry of its list, begins with the number: `M7 A side-address body ...`, `- T1 One point ...`;
 * - a sentence begins with the word: `Rule C3: ...`, `Rules L1 to L4 ...`;
 * - or a colon leads from the number to what it says: `... of a mic (rule C1): the least ...`.
 * A rule that is only mentioned, `(rule C1)`, is not defined there.
 */
export const rulesDefined = (text: string): ReadonlySet<string> =>
  new Set(
    text.split('\n').flatMap((line) => {
      const said = COMMENT.exec(line)?.[1];
      if (said === undefined) return [];
      const ruled = /^Rules? (?=[A-Z]\d)/.exec(said);
      const bare = ruled ? said.slice(ruled[0].length) : said;
      const within = [...said.matchAll(/(?:\. Rule ([A-Z]\d{1,2}):|\(rule ([A-Z]\d{1,2})\):)/g)];
      return [...numbersAtStart(bare), ...within.map(([, one, other]) => one ?? other ?? '')];
    }),
  );

const COMMENT = /^\s*(?:\/\*\*|\*|\/\/)\s+(?:- )?(.*)$/;

/** `L1`, `L1 to L4`, `T1-T3`, `A2 and A3` at the beginning of a text, each number by itself. */
function numbersAtStart(text: string): readonly string[] {
  const found = /^([A-Z])(\d{1,2})(?: (to|and) [A-Z](\d{1,2}))?(?![\w-])/.exec(text);
  return found ? numbered(found[1] ?? '', Number(found[2]), Number(found[4] ?? found[2])) : [];
}

/** All rules that a text quotes, ranges taken apart. */
export const rulesQuoted = (text: string): ReadonlySet<string> =>
  new Set(
    [...text.matchAll(/\b([A-Z])(\d{1,2})(?:(?: to |-)[A-Z]?(\d{1,2}))?\b/g)].flatMap(
      ([, letter = '', first, last]) => numbered(letter, Number(first), Number(last ?? first)),
    ),
  );

const numbered = (letter: string, first: number, last: number): readonly string[] =>
  Array.from({ length: Math.max(1, last - first + 1) }, (_, k) => `${letter}${first + k}`);

/** The names of all tests and groups of tests in a file, each case of a table with its own words: what is no name quotes no rule. */
export function testNames(path: string, text: string): readonly string[] {
  const names: string[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const entry of value) visit(entry);
    if (!isNode(value)) return;
    if (value.type === 'CallExpression' && TEST_CALLS.has(calledName(value['callee']) ?? '')) {
      names.push(...namesOf(listOf(value['arguments'])[0]));
    }
    for (const child of Object.values(value)) visit(child);
  };
  visit(parseSync(path, text).program);
  return names;
}

const TEST_CALLS = new Set(['describe', 'it', 'test']);

type Node = Readonly<Record<string, unknown>> & { readonly type: string };

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

/** `test` of `test(...)`, `test.each([...])(...)` and `test.describe.serial(...)`. */
function calledName(callee: unknown): string | undefined {
  if (!isNode(callee)) return undefined;
  if (callee.type === 'Identifier') return String(callee['name']);
  if (callee.type === 'MemberExpression') return calledName(callee['object']);
  return callee.type === 'CallExpression' ? calledName(callee['callee']) : undefined;
}

/** The name that a call gives; of a table, `test.each([...])`, the first text of every row, which `%s` puts into the name. */
function namesOf(node: unknown): readonly string[] {
  if (!isNode(node)) return [];
  if (node.type === 'Literal') return typeof node['value'] === 'string' ? [node['value']] : [];
  if (node.type === 'TSAsExpression') return namesOf(node['expression']);
  if (node.type === 'TemplateLiteral') {
    return listOf(node['quasis']).map((part) => String(Object(Object(part).value).cooked));
  }
  if (node.type !== 'ArrayExpression') return [];
  return listOf(node['elements']).flatMap((row) =>
    namesOf(isNode(row) && row.type === 'ArrayExpression' ? listOf(row['elements'])[0] : row),
  );
}

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
