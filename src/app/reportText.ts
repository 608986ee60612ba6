import type { Layout } from '../layout/layout.ts';
import { rowsWorstFirst, whyNot } from '../report/judgement.ts';
import type { Finding, Report, RunRow, Severity } from '../report/report.ts';
import { showMargin } from '../units/clearanceText.ts';
import { showLongLength } from '../units/lengthText.ts';
import { kitChangeLines } from '../views/words/changeWords.ts';
import { clearancePlace, clearanceWords, movingWords } from '../views/words/clearanceWords.ts';
import { findingWords } from '../views/words/findingWords.ts';
import { counted, nameOf } from '../views/words/nameOf.ts';
import { cableSumWords, runPartWords, runWords } from '../views/words/runWords.ts';
import { signOffHeadWords, signOffStateWords } from '../views/words/signOffWords.ts';
import { troublesWords } from '../views/words/troubleWords.ts';
import { saidVerdict, tallyWords } from '../views/words/verdictWords.ts';

/** The whole report of a layout for a person to read, line by line. */
export function reportText(layout: Layout, report: Report): string {
  const lines = [
    ...headLines(layout, report),
    ...section('Clearances', clearanceLines(layout, report), 'No mics.'),
    ...section('Runs', runLines(layout, report), 'No cables.'),
    ...section('Findings', findingLines(layout, report), 'None.'),
    ...section('Sign-off', signOffLines(layout, report), `${signOffStateWords.none}.`),
  ];
  return `${lines.map(printable).join('\n')}\n`;
}

function headLines(layout: Layout, report: Report): string[] {
  const { clearances } = report;
  const { name, venue } = layout;
  return [
    venue.name === '' ? name : `${name}, at ${venue.name}`,
    `${counted(clearances.length, 'mic')}: ${tallyWords(report)}; margin ${showMargin(layout)}`,
  ];
}

const section = (title: string, lines: readonly string[], none: string): string[] => [
  '',
  title,
  ...(lines.length > 0 ? lines : [`  ${none}`]),
];

function signOffLines(layout: Layout, { signOff }: Report): string[] {
  if (signOff.kind === 'none') return [];
  const by = `  ${signOffHeadWords(signOff)}`;
  if (signOff.kind === 'broken') return [by];
  return [by, ...kitChangeLines(signOff.changes, layout).map((line) => `    ${line}`)];
}

function clearanceLines(layout: Layout, report: Report): string[] {
  return rowsWorstFirst(report).flatMap((row) => {
    const said = `  ${saidVerdict(row, report).word.toUpperCase().padEnd(6)}  ${nameOf(layout, row.mic)}`;
    const troubles = troublesWords(row, report, layout);
    if (troubles !== '') {
      const why = whyNot(row.mic, report);
      return [`${said}: ${troubles}`, `          ${movingWords(row, why, layout)}`];
    }
    const place = row.verdict === 'clear' ? undefined : clearancePlace(row, layout);
    return [
      `${said}: ${clearanceWords(row, layout)}`,
      ...(place === undefined ? [] : [`          ${place}`]),
    ];
  });
}

function runLines(layout: Layout, report: Report): string[] {
  const { runs, totals, loom } = report;
  if (runs.length === 0) return [];
  const long = (length: number) => showLongLength(length, layout.units);
  return [
    ...runs.flatMap((run) => [`  ${runWords(run, layout)}`, `          ${partsOf(run, long)}`]),
    `  Total ${long(totals.cable)}, longest ${long(totals.longest)}, by the loom ${long(totals.extra)}; lines on the floor ${long(loom.laid)}`,
    `  ${cableSumWords(report, layout)}`,
  ];
}

const partsOf = (run: RunRow, long: (length: number) => string): string =>
  run.parts.map(({ what, length }) => `${runPartWords(what)} ${long(length)}`).join(', ');

const severities: Readonly<Record<Severity, string>> = {
  stop: 'STOP',
  warn: 'WARN',
  note: 'NOTE',
};

const findingLines = (layout: Layout, { findings, clearances }: Report): string[] =>
  findings.flatMap((finding: Finding) => {
    const { title, detail, next } = findingWords(finding, layout, clearances);
    return [`  ${severities[finding.severity]}  ${title}`, `        ${detail}`, `        ${next}`];
  });

/** Names come from files, and a terminal obeys control characters. */
const printable = (line: string): string => line.replace(/\p{Cc}/gu, '\uFFFD').trimEnd();
