import { hostileProblems } from './hostile.ts';
import { type Layout, layoutSchema, SCHEMA_VERSION } from './layout.ts';
import type { Document } from './migrations/document.ts';
import { migrated } from './migrations/migrate.ts';
import { MOST_PROBLEMS, type Problem, type ProblemCode, summary } from './problem.ts';
import { checkReferences } from './references.ts';
import { schemaProblems } from './schema/schemaProblems.ts';

/** A layout, or why the document is not one: the first problems found, and how many more there are. */
export type ReadResult =
  | { readonly ok: true; readonly layout: Layout }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly more: number };

/** Characters in a file. A full layout has under 300,000; an absurd one is still read so far that its fault can be named. */
export const MOST_CHARACTERS = 8_000_000;

/** Reads the text of a layout file. Never throws; nothing of a document with a problem is used. */
export function readLayout(text: string): ReadResult {
  if (text.length > MOST_CHARACTERS) {
    const actual = `${text.length} characters`;
    return failed([whole('too-large', `at most ${MOST_CHARACTERS} characters`, actual)]);
  }
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const why = error instanceof Error ? error.message.slice(0, 200) : 'no reason given';
    const actual = `text that is cut off or damaged, or no layout at all (${why})`;
    return failed([whole('not-json', 'JSON text', actual)]);
  }
  return checkLayout(value);
}

/** Checks a value that should be a layout, of this or an older version: from a file, the database or a link. Never throws. */
export function checkLayout(value: unknown): ReadResult {
  const hostile = hostileProblems(value);
  if (hostile.length > 0) return failed(hostile);
  if (!isDocument(value)) {
    return failed([whole('wrong-type', 'a layout, a JSON object', summary(value))]);
  }
  const version = versionOf(value);
  if (typeof version !== 'number') return failed([version]);
  const document = migrated(value, version);
  const parsed = layoutSchema.safeParse(document);
  if (!parsed.success) return failed(schemaProblems(parsed.error.issues, document));
  const problems = checkReferences(parsed.data);
  return problems.length > 0 ? failed(problems) : { ok: true, layout: parsed.data };
}

/**
 * The text of a layout file: indented JSON with a closing newline, fields in the schema's order. A layout that does not
 * pass its own check is still written, as it is: an export must never lose work.
 */
export function writeLayout(layout: Layout): string {
  const checked = layoutSchema.safeParse(layout);
  return `${JSON.stringify(checked.success ? checked.data : layout, null, 2)}\n`;
}

const failed = (problems: readonly Problem[]): ReadResult => ({
  ok: false,
  problems: problems.slice(0, MOST_PROBLEMS),
  more: Math.max(0, problems.length - MOST_PROBLEMS),
});

const whole = (code: ProblemCode, expected: string, actual: string): Problem => ({
  code,
  path: '',
  expected,
  actual,
});

const isDocument = (value: unknown): value is Document =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function versionOf(document: Document): number | Problem {
  const version = document.schema;
  const path = 'schema';
  const actual = summary(version);
  if (version === undefined) {
    return { code: 'missing', path, expected: 'the version of the layout format', actual };
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { code: 'wrong-type', path, expected: 'a version number, 1 or more', actual };
  }
  if (version > SCHEMA_VERSION) {
    const expected = `a version up to ${SCHEMA_VERSION}; this was written by a newer version of the program`;
    return { code: 'newer-version', path, expected, actual };
  }
  return version;
}
