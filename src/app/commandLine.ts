import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { MOST_CHARACTERS } from '../layout/read.ts';
import { reportCommand } from './reportCommand.ts';
import { asksForSheet, sheetCommand } from './sheetCommand.ts';

/** npm runs scripts in the project's folder; the file is named from where the user is. */
function placeOf(file: string): string {
  const here = resolve(file);
  const { INIT_CWD } = process.env;
  return existsSync(here) || INIT_CWD === undefined ? here : resolve(INIT_CWD, file);
}

function read(file: string): string {
  const place = placeOf(file);
  const { size } = statSync(place);
  if (size > MOST_CHARACTERS) {
    throw new Error(`expected at most ${MOST_CHARACTERS} bytes, found ${size}`);
  }
  return readFileSync(place, 'utf8');
}

/** A new file is named from where the user is, too. */
function write(file: string, content: string | Uint8Array): void {
  writeFileSync(resolve(process.env['INIT_CWD'] ?? '', file), content);
}

const given = process.argv.slice(2);
const around = {
  read,
  write,
  print: (text: string) => process.stdout.write(text),
  complain: (text: string) => process.stderr.write(text),
};
process.exitCode = asksForSheet(given)
  ? await sheetCommand(given, around)
  : reportCommand(given, around);
