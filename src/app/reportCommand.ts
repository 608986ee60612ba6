import type { Layout } from '../layout/layout.ts';
import type { Problem } from '../layout/problem.ts';
import { readLayout } from '../layout/read.ts';
import { createAnalyst } from '../report/analyse.ts';
import { patchReport } from '../report/patch.ts';
import { PATCH_TABLES, type PatchTable, patchCsv } from '../report/patchCsv.ts';
import type { Report } from '../report/report.ts';
import { reportJson } from '../report/reportJson.ts';
import { reportText } from './reportText.ts';

/** What the command touches outside itself. */
export interface CommandSurroundings {
  /** The text of a file. Throws with a message that says why it can't be read. */
  read(file: string): string;
  print(text: string): void;
  complain(text: string): void;
}

const USAGE = `Usage: npm run report -- FILE [--json | --csv ${PATCH_TABLES.join('|')}]`;

/**
 * Prints the whole report of a layout file.
 *
 * @returns The exit code: 0 when no mic is struck, 1 when one is, 2 when there is no report.
 */
export function reportCommand(
  given: readonly string[],
  { read, print, complain }: CommandSurroundings,
): 0 | 1 | 2 {
  const asked = askedFor(given);
  if ('wrong' in asked) {
    complain(`${asked.wrong}${USAGE}\n`);
    return 2;
  }
  const { file, as } = asked;
  let text: string;
  try {
    text = read(file);
  } catch (error) {
    complain(`${file} can't be read: ${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
  const found = readLayout(text);
  if (!found.ok) {
    complain(problemLines(file, found.problems, found.more));
    return 2;
  }
  const report = createAnalyst()(found.layout);
  print(shown(found.layout, report, as));
  return report.clearances.some(({ verdict }) => verdict === 'struck') ? 1 : 0;
}

/** How the report is printed: for people, as JSON, or one table as CSV. */
type Shape = 'text' | 'json' | PatchTable;

function askedFor(
  given: readonly string[],
): { readonly file: string; readonly as: Shape } | { readonly wrong: string } {
  const csv = given.indexOf('--csv');
  const wanted = csv < 0 ? undefined : given[csv + 1];
  const table = PATCH_TABLES.find((name) => name === wanted);
  if (csv >= 0 && table === undefined) {
    return { wrong: `Expected one of ${PATCH_TABLES.join(', ')} after --csv. ` };
  }
  const rest = csv < 0 ? given : given.toSpliced(csv, 2);
  const unknown = rest.find((word) => word.startsWith('--') && word !== '--json');
  if (unknown !== undefined) return { wrong: `Unknown option ${unknown}. ` };
  const json = rest.includes('--json');
  if (json && table !== undefined) return { wrong: 'Expected either --json or --csv. ' };
  const [file, ...more] = rest.filter((word) => !word.startsWith('--'));
  if (file === undefined || more.length > 0) return { wrong: '' };
  return { file, as: table ?? (json ? 'json' : 'text') };
}

function shown(layout: Layout, report: Report, as: Shape): string {
  switch (as) {
    case 'text':
      return reportText(layout, report);
    case 'json':
      return `${JSON.stringify(reportJson(layout, report), null, 2)}\n`;
    default:
      return patchCsv(as, layout, patchReport(layout, report));
  }
}

function problemLines(file: string, problems: readonly Problem[], more: number): string {
  const lines = problems.map(
    ({ path, expected, actual }) =>
      `  ${path === '' ? '' : `${path}: `}expected ${expected}, found ${actual}`,
  );
  const rest = more > 0 ? [`  and ${more} more`] : [];
  const printable = [...lines, ...rest].map((line) => line.replace(/\p{Cc}/gu, '\uFFFD'));
  return `${[`${file} is not a layout:`, ...printable].join('\n')}\n`;
}
