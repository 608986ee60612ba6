import type { RefusedFile } from '../library/takeInFiles.ts';
import { counted, listed } from './nameOf.ts';

/** Names said in one line: the rest is counted. */
const SAID = 5;

/** `“Club”, “Hall” and 3 more`. */
export function quotedNames(names: readonly string[]): string {
  const said = names.slice(0, SAID).map((name) => `“${name}”`);
  const more = names.length - said.length;
  return listed(more > 0 ? [...said, `${more} more`] : said);
}

/** Of layouts that were taken in: what to call that, and where they are. */
export const takenWords = (names: readonly string[]): readonly [title: string, detail: string] =>
  names.length === 1
    ? [`Imported ${quotedNames(names)}`, 'It is in the list as a layout of its own.']
    : [
        `Imported ${counted(names.length, 'layout')}`,
        `${quotedNames(names)} are in the list, each as a layout of its own.`,
      ];

/** Of files that were not taken: what to call that, and what became of the layouts that were chosen with them; empty where there are none. */
export const notImportedWords = (
  refused: number,
  taken: number,
): readonly [title: string, alongside: string] => [
  refused === 1 ? 'This file was not imported' : `${refused} files were not imported`,
  taken === 0
    ? ''
    : `${counted(taken, 'layout')} that came along ${taken === 1 ? 'was' : 'were'} imported.`,
];

const faultWords = ({ path, message }: RefusedFile['problems'][number]): string =>
  path === '' ? message : `${path}: ${message}`;

/** What was said of one file that was not taken: `“b.json”: margin: expected a number, found "wide".` */
const refusalWords = ({ file, problems }: RefusedFile): string => {
  const [first] = problems;
  const said = first ? faultWords(first) : '';
  const more = problems.length > 1 ? ` and ${problems.length - 1} more` : '';
  return `“${file}”: ${said}${more}.`;
};

/** Of files that were not opened, over an open layout: what to call that, and why each was not. */
export function notOpenedWords(
  refused: readonly RefusedFile[],
): readonly [title: string, detail: string] {
  const [first] = refused;
  if (first && refused.length === 1) {
    return [`“${first.file}” was not opened`, first.problems.slice(0, 3).map(faultWords).join(' ')];
  }
  return [
    `${counted(refused.length, 'file')} were not opened`,
    refused.map(refusalWords).join(' '),
  ];
}

/** Of several layouts that came over an open one: `Taken in: “Club”, open now, and in the list of layouts “Hall” and “Open air”`. */
export const openedWords = ([open, ...rest]: readonly string[]): string =>
  `Taken in: “${open ?? ''}”, open now, and in the list of layouts ${quotedNames(rest)}`;
