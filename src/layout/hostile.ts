import { z } from 'zod';
import { layoutSchema } from './layout.ts';
import {
  MOST_PROBLEMS,
  type Path,
  type Problem,
  type ProblemCode,
  showPath,
  summary,
} from './problem.ts';
import { mostEntries } from './schema/listLimit.ts';

/** Levels of nesting; a layout has 5. */
const MOST_LEVELS = 12;
/** Values in a whole document; a full layout has under 10,000. */
const MOST_VALUES = 500_000;

const FORBIDDEN_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** How long the layout's own lists may be, so that an absurd list is refused before any entry is read. */
const longestList: ReadonlyMap<string, number> = new Map(
  Object.entries(layoutSchema.shape).flatMap(([key, field]) =>
    field instanceof z.ZodArray ? [[key, mostEntries(field)] as const] : [],
  ),
);

/** What no layout has at any place; it is looked for before anything else touches the value. Ends on circular values too. */
export function hostileProblems(root: unknown): readonly Problem[] {
  const problems: Problem[] = [];
  let values = 0;
  const visit = (value: unknown, path: Path): void => {
    values += 1;
    if (problems.length > MOST_PROBLEMS || values > MOST_VALUES) return;
    const fault = faultOf(value, path);
    if (fault) {
      problems.push({ ...fault, path: showPath(path), actual: summary(value) });
    } else if (Array.isArray(value)) {
      value.forEach((entry, index) => {
        visit(entry, [...path, index]);
      });
    } else if (typeof value === 'object' && value !== null) {
      for (const key of Object.keys(value)) visit(Reflect.get(value, key), [...path, key]);
    }
  };
  visit(root, []);
  if (values > MOST_VALUES) {
    problems.push({
      code: 'too-many',
      path: '',
      expected: `at most ${MOST_VALUES} values`,
      actual: 'more',
    });
  }
  return problems;
}

function faultOf(value: unknown, path: Path): { code: ProblemCode; expected: string } | undefined {
  if (FORBIDDEN_KEYS.has(String(path.at(-1)))) {
    return { code: 'forbidden-key', expected: 'no field of this name' };
  }
  if (typeof value === 'number' && !Number.isFinite(value)) {
    return { code: 'not-finite', expected: 'a finite number' };
  }
  if (typeof value !== 'object' || value === null) return undefined;
  if (path.length > MOST_LEVELS) {
    return { code: 'too-deep', expected: `at most ${MOST_LEVELS} levels of nesting` };
  }
  const most = path.length === 1 ? longestList.get(String(path[0])) : undefined;
  return Array.isArray(value) && most !== undefined && value.length > most
    ? { code: 'too-many', expected: `at most ${most} entries` }
    : undefined;
}
