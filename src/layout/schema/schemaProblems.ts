import type { z } from 'zod';
import { type Path, type Problem, showPath, summary, valueAt } from '../problem.ts';

type Issue = z.core.$ZodIssue;

/** What the validator found, as problems with the path, what was expected and what stands there instead. */
export function schemaProblems(issues: readonly Issue[], document: unknown): readonly Problem[] {
  return issues.flatMap((issue) => problemsOf(issue, document));
}

function problemsOf(issue: Issue, document: unknown): readonly Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => unknownField([...issue.path, key], document));
  }
  const actual = valueAt(document, issue.path);
  return [
    {
      code: actual === undefined ? 'missing' : codeOf(issue),
      path: showPath(issue.path),
      expected: expectedBy(issue),
      actual:
        issue.code === 'too_big' && issue.origin === 'string' ? sizeOf(actual) : summary(actual),
    },
  ];
}

const unknownField = (path: Path, document: unknown): Problem => ({
  code: 'unknown-field',
  path: showPath(path),
  expected: 'no field of this name here',
  actual: summary(valueAt(document, path)),
});

const sizeOf = (value: unknown): string =>
  typeof value === 'string' ? `a text of ${value.length} characters` : summary(value);

function codeOf(issue: Issue): Problem['code'] {
  switch (issue.code) {
    case 'invalid_type':
      return 'wrong-type';
    case 'too_big':
    case 'too_small':
      return issue.origin === 'array' ? 'too-many' : 'out-of-range';
    case 'invalid_format':
      return 'bad-format';
    default:
      return 'wrong-value';
  }
}

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return typeNames.get(issue.expected) ?? issue.expected;
    case 'invalid_value':
      return oneOf(issue.values);
    case 'invalid_union':
      return unionChoices(issue);
    case 'too_big':
      return `at most ${issue.maximum}${unitOf(issue.origin, issue.maximum)}`;
    case 'too_small':
      return `at least ${issue.minimum}${unitOf(issue.origin, issue.minimum)}`;
    default:
      return issue.message;
  }
}

const typeNames: ReadonlyMap<string, string> = new Map([
  ['number', 'a number'],
  ['int', 'a whole number'],
  ['string', 'a text'],
  ['boolean', 'true or false'],
  ['array', 'a list'],
  ['object', 'an object'],
]);

function unionChoices(issue: z.core.$ZodIssueInvalidUnion): string {
  if ('options' in issue && Array.isArray(issue.options)) return oneOf(issue.options);
  const values = issue.errors
    .flat()
    .flatMap((inner) => (inner.code === 'invalid_value' ? inner.values : []));
  return oneOf(values);
}

const oneOf = (values: readonly unknown[]): string =>
  values.length === 1 ? summary(values[0]) : `one of ${values.map(summary).join(', ')}`;

function unitOf(origin: string, limit: number | bigint): string {
  const many = limit === 1 ? '' : 's';
  if (origin === 'string') return ` character${many}`;
  return origin === 'array' ? ` entr${limit === 1 ? 'y' : 'ies'}` : '';
}
