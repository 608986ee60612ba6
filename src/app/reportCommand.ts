import type { Problem } from '../layout/problem.ts';
import { readLayout } from '../layout/read.ts';
import { createAnalyst } from '../report/analyse.ts';
import { reportJson } from '../report/reportJson.ts';
import { reportText } from './reportText.ts';

/** What the command touches outside itself. */
export interface CommandSurroundings {
  /** The text of a file. Throws with a message that says why it can't be read. */
  read(file: string): string;
  print(text: string): void;
  complain(text: string): void;
}

const USAGE = 'Usage: npm run report -- FILE [--json]';

/**
 * Prints the whole report of a layout file.
 *
 * @returns The exit code: 0 when no mic is struck, 1 when one is, 2 when there is no report.
 */
export function reportCommand(
  given: readonly string[],
  { read, print, complain }: CommandSurroundings,
): 0 | 1 | 2 {
  const options = given.filter((word) => word.startsWith('--'));
  const [file, ...more] = given.filter((word) => !word.startsWith('--'));
  const unknown = options.find((option) => option !== '--json');
  if (file === undefined || more.length > 0 || unknown !== undefined) {
    complain(`${unknown === undefined ? '' : `Unknown option ${unknown}. `}${USAGE}\n`);
    return 2;
  }
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
  print(
    options.includes('--json')
      ? `${JSON.stringify(reportJson(found.layout, report), null, 2)}\n`
      : reportText(found.layout, report),
  );
  return report.clearances.some(({ verdict }) => verdict === 'struck') ? 1 : 0;
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
