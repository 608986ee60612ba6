import { posix } from 'node:path';
import { roomTable } from './roomTable.ts';
import { type Import, readSource, type SourceFacts } from './sourceFacts.ts';

/**
 * The rules of the source tree, quoted by the tests:
 * A1 A room imports only the rooms its line of the table names, types and worker addresses included.
 * A2 A room imports only the packages its line names.
 * A3 A pure room uses nothing of its surroundings: no DOM, clock, randomness, console.
 * A4 Every import says what it imports, in full, with the file's ending, and the file is there.
 * A5 No file is an `index` or does nothing but pass on what others export.
 * A6 No folder or file has a name that says nothing: utils, helpers, common, types, lib.
 * A7 `src/` holds rooms of the table and no loose file.
 * A8 Files do not import each other in a circle, types included.
 * A9 A file has at most 300 lines of code.
 * A10 The top level holds only what the list names.
 */
export interface Fault {
  readonly rule: string;
  readonly path: string;
  readonly message: string;
}

/** Text of every file under `src/`, by its path from the top, with `/` between parts. */
export type SourceTree = Readonly<Record<string, string>>;

const maxCodeLines = 300;
const emptyNames = new Set(['utils', 'util', 'helpers', 'helper', 'common', 'types', 'lib']);
const looseFiles = new Set(['src/tsconfig.pure.json']);
const isSource = (path: string) => /\.(ts|tsx|mjs|js)$/.test(path);
const roomOf = (path: string) => path.split('/')[1] ?? '';

/** All faults of a source tree, in the order of its files. */
export function checkSources(tree: SourceTree): Fault[] {
  const facts = new Map(
    Object.entries(tree)
      .filter(([path]) => isSource(path))
      .map(([path, text]) => [path, readSource(path, text)]),
  );
  return [
    ...Object.keys(tree).flatMap(placeFaults),
    ...[...facts].flatMap(([path, found]) => fileFaults(path, found)),
    ...[...facts].flatMap(([path, found]) =>
      found.imports.flatMap((one) => importFaults(path, one, tree)),
    ),
    ...circleFaults(facts),
  ];
}

function placeFaults(path: string): Fault[] {
  if (looseFiles.has(path)) return [];
  const faults: Fault[] = [];
  const parts = path.split('/');
  if (parts.length < 3) faults.push({ rule: 'A7', path, message: 'a loose file in src/' });
  else if (roomTable[roomOf(path)] === undefined) {
    faults.push({ rule: 'A7', path, message: `no room ${roomOf(path)} in the table` });
  }
  const names = parts.map((part) => part.split('.')[0] ?? '');
  const empty = names.find((name) => emptyNames.has(name));
  if (empty !== undefined)
    faults.push({ rule: 'A6', path, message: `the name ${empty} says nothing` });
  if (names.at(-1) === 'index') faults.push({ rule: 'A5', path, message: 'an index file' });
  return faults;
}

function fileFaults(path: string, found: SourceFacts): Fault[] {
  const faults: Fault[] = [];
  if (found.syntaxError !== undefined) {
    faults.push({ rule: 'A4', path, message: `can't be read: ${found.syntaxError}` });
  }
  if (found.onlyReexports) faults.push({ rule: 'A5', path, message: 'only passes on exports' });
  if (found.codeLines > maxCodeLines) {
    const message = `${found.codeLines} lines of code, at most ${maxCodeLines}`;
    faults.push({ rule: 'A9', path, message });
  }
  if (roomTable[roomOf(path)]?.pure !== true) return faults;
  for (const { name, line } of found.globals) {
    faults.push({ rule: 'A3', path, message: `line ${line}: ${name} in a pure room` });
  }
  for (const line of found.references) {
    faults.push({ rule: 'A3', path, message: `line ${line}: a reference to other types` });
  }
  return faults;
}

function importFaults(path: string, one: Import, tree: SourceTree): Fault[] {
  const { from, address, line } = one;
  const fault = (rule: string, message: string): Fault[] => [
    { rule, path, message: `line ${line}: ${message}` },
  ];
  if (from === undefined) return fault('A4', 'an import whose target is not written out');
  const room = roomOf(path);
  const allowed = roomTable[room];
  if (allowed === undefined) return [];
  if (!isRelative(from)) {
    const name = packageName(from);
    return allowed.packages.includes(name) ? [] : fault('A2', `${room} may not import ${name}`);
  }
  const target = resolveImport(path, from);
  const inSource = target.startsWith('src/');
  // The launchers find the project's folders, such as `dist`, from where they are themselves.
  if (address && room === 'app' && !inSource) return [];
  const other = roomOf(target);
  if (!inSource || (other !== room && !allowed.rooms.includes(other))) {
    return fault('A1', `${room} may not import ${target}`);
  }
  return target in tree ? [] : fault('A4', `there is no file ${target}`);
}

const isRelative = (from: string) => from.startsWith('.') || from.startsWith('/');

const resolveImport = (path: string, from: string) =>
  posix.join(posix.dirname(path), from.split('?')[0] ?? '');

function packageName(from: string): string {
  if (from.startsWith('node:')) return 'node:';
  return from.split('/', from.startsWith('@') ? 2 : 1).join('/');
}

/** Each circle once, named from its first file in the order of paths. */
function circleFaults(facts: ReadonlyMap<string, SourceFacts>): Fault[] {
  const done = new Set<string>();
  const faults: Fault[] = [];
  const visit = (path: string, trail: readonly string[]) => {
    const start = trail.indexOf(path);
    if (start >= 0) {
      const message = [...trail.slice(start), path].join(' -> ');
      faults.push({ rule: 'A8', path, message });
      return;
    }
    if (done.has(path)) return;
    for (const { from } of facts.get(path)?.imports ?? []) {
      if (from !== undefined && isRelative(from))
        visit(resolveImport(path, from), [...trail, path]);
    }
    done.add(path);
  };
  for (const path of [...facts.keys()].sort()) visit(path, []);
  return faults;
}

const topLevel = new Set(
  `.ci .git .gitignore .npmrc DEVELOPERS.md README.md biome.json e2e index.html package-lock.json package.json public src
  tests tsconfig.json vite.config.ts`.split(/\s+/),
);

/**
 * A10.
 *
 * @param names What the top folder holds.
 * @param ignored Names that are not part of the project, such as `node_modules`.
 */
export const topLevelFaults = (names: readonly string[], ignored: readonly string[]): Fault[] =>
  names
    .filter((name) => !topLevel.has(name) && !ignored.includes(name))
    .map((path) => ({ rule: 'A10', path, message: 'not in the list of the top level' }));
