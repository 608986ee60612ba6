import type { Layout } from '../layout/layout.ts';
import type { Problem } from '../layout/problem.ts';
import { readLayout } from '../layout/read.ts';

/** What commands touch outside themselves. */
export interface CommandSurroundings {
  /** The text of a file. Throws with a message that says why it can't be read. */
  read(file: string): string;
  print(text: string): void;
  complain(text: string): void;
}

/** The layout of a file; undefined when it can't be read, after saying why. */
export function readGiven(
  file: string,
  { read, complain }: Pick<CommandSurroundings, 'read' | 'complain'>,
): Layout | undefined {
  let text: string;
  try {
    text = read(file);
  } catch (error) {
    complain(`${file} can't be read: ${error instanceof Error ? error.message : String(error)}\n`);
    return undefined;
  }
  const found = readLayout(text);
  if (found.ok) return found.layout;
  complain(problemLines(file, found.problems, found.more));
  return undefined;
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
