import type { Layout } from '../layout/layout.ts';
import { createAnalyst } from '../report/analyse.ts';
import { shownVerdict } from '../report/judgement.ts';
import { patchReport } from '../report/patch.ts';
import { PATCH_TABLES, type PatchTable, patchCsv } from '../report/patchCsv.ts';
import type { Report } from '../report/report.ts';
import { reportJson } from '../report/reportJson.ts';
import { type CommandSurroundings, readGiven } from './readGiven.ts';
import { reportText } from './reportText.ts';

const USAGE = `Usage: npm run report -- FILE [--json | --csv ${PATCH_TABLES.join('|')} | --sheet pdf|svg|dxf OUT]`;

/**
 * Prints the whole report of a layout file.
 *
 * @returns The exit code: 0 when no mic is struck, stands in something or is where its stand can't hold it, 1 when one is, 2 when there is no report.
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
  const layout = readGiven(file, { read, complain });
  if (!layout) return 2;
  const report = createAnalyst()(layout);
  print(shown(layout, report, as));
  return report.clearances.some((row) => shownVerdict(row, report) === 'struck') ? 1 : 0;
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
