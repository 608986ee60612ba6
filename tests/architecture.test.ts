import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { roomTable } from './support/roomTable.ts';
import { checkSources, type SourceTree, topLevelFaults } from './support/sourceRules.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

function readTree(): SourceTree {
  const found = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true });
  return Object.fromEntries(
    found
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((file) => [relative(root, file).split(sep).join('/'), readFileSync(file, 'utf8')]),
  );
}

describe('the source tree', () => {
  test('keeps its rules', () => {
    const tree = readTree();
    expect(Object.keys(tree)).toContain('src/app/page.tsx');
    expect(checkSources(tree)).toEqual([]);
  });

  test('has the top level that the list names (A10)', () => {
    const ignored = readFileSync(join(root, '.gitignore'), 'utf8').split('\n');
    const names = ignored.map((line) => line.replace(/\/$/, ''));
    expect(topLevelFaults(readdirSync(root), names)).toEqual([]);
  });
});

/** The rules broken by a few files that are planted beside sound ones. */
function rulesBroken(planted: Readonly<Record<string, string>>): string[] {
  const sound = {
    'src/units/length.ts': 'export const mm = 1;',
    'src/geometry/vector.ts': "import { mm } from '../units/length.ts';\nexport const one = mm;",
    'src/layout/layout.ts': 'export interface Layout { readonly name: string }',
    'src/rig/placed.ts': 'export const placed = 1;',
    'src/views/panel.tsx':
      'export const Panel = () => <p>10 % off, don\'t import("x") // here</p>;',
  };
  expect(checkSources(sound)).toEqual([]);
  return checkSources({ ...sound, ...planted }).map(({ rule }) => rule);
}

const oneFile = (path: string, text: string) => rulesBroken({ [path]: text });

describe('A1: rooms import only what the table allows', () => {
  test.each([
    ['static', "import { placed } from '../rig/placed.ts';\nexport const x = placed;"],
    ['type-only', "import type { Placed } from '../rig/placed.ts';\nexport type X = Placed;"],
    ['inline type', "export type X = import('../rig/placed.ts').Placed;"],
    ['dynamic', "export const x = () => import('../rig/placed.ts');"],
    ['template', 'export const x = () => import(`../rig/placed.ts`);'],
    ['for its effect', "import '../rig/placed.ts';\nexport const x = 1;"],
    ['re-exported', "export { placed } from '../rig/placed.ts';\nexport const x = 1;"],
    ['worker', "export const x = new URL('../rig/placed.ts', import.meta.url);"],
    ['worker address', "import x from '../rig/placed.ts?worker&url';\nexport const y = x;"],
    ['through the top', "import '../../src/rig/placed.ts';\nexport const x = 1;"],
    ['from outside src', "import '../../tests/support/roomTable.ts';\nexport const x = 1;"],
  ])('%s', (_, text) => {
    expect(oneFile('src/geometry/planted.ts', text)).toEqual(['A1']);
  });

  test('every room is kept from every room that its line does not name', () => {
    const names = Object.keys(roomTable);
    const files = Object.fromEntries(
      names.map((name) => [`src/${name}/a.ts`, 'export const a = 1;']),
    );
    for (const [name, { rooms }] of Object.entries(roomTable)) {
      for (const other of names.filter((one) => one !== name)) {
        const planted = {
          [`src/${name}/planted.ts`]: `import '../${other}/a.ts';\nexport const x = 1;`,
        };
        const rules = checkSources({ ...files, ...planted }).map(({ rule }) => rule);
        expect(rules, `${name} imports ${other}`).toEqual(rooms.includes(other) ? [] : ['A1']);
      }
    }
  });

  test('the table has no circle, and pure rooms import only pure rooms', () => {
    const reached = (name: string): string[] =>
      (roomTable[name]?.rooms ?? []).flatMap((next) => [next, ...reached(next)]);
    for (const [name, room] of Object.entries(roomTable)) {
      expect(reached(name), name).not.toContain(name);
      const impure = room.rooms.filter((next) => roomTable[next]?.pure !== true);
      if (room.pure) expect(impure, name).toEqual([]);
    }
  });
});

test.each([
  ['react in a pure room', 'src/rig/planted.ts', "import 'react';\nexport const x = 1;"],
  [
    'a type of konva',
    'src/report/planted.ts',
    "import type { Node } from 'konva/lib/Node';\nexport type X = Node;",
  ],
  [
    'node in a pure room',
    'src/units/planted.ts',
    "import { join } from 'node:path';\nexport const x = join;",
  ],
  ['idb outside storage', 'src/session/planted.ts', "export const x = () => import('idb');"],
  [
    'konva in views',
    'src/views/planted.tsx',
    "import { Layer } from 'react-konva';\nexport const X = Layer;",
  ],
  [
    'a physics library',
    'src/clearance/planted.ts',
    "import '@dimforge/rapier3d-compat';\nexport const x = 1;",
  ],
  ['require', 'src/units/planted.ts', "export const x = require('zod');"],
])('A2: a package that the line does not name: %s', (_, path, text) => {
  expect(oneFile(path, text)).toEqual(['A2']);
});

describe('A3: pure rooms use nothing of their surroundings', () => {
  test.each([
    'document.title',
    'window.innerWidth',
    'performance.now()',
    'Date.now()',
    "Date['now']()",
    'new Date()',
    'Date()',
    'Math.random()',
    'console',
    'globalThis.x',
    'setTimeout(() => 1, 2)',
    'fetch',
  ])('%s', (use) => {
    expect(oneFile('src/rig/planted.ts', `export const x = () => ${use};`)).toEqual(['A3']);
  });

  test('taken apart', () => {
    const text = 'const { random } = Math;\nexport const x = random;';
    expect(oneFile('src/rig/planted.ts', text)).toEqual(['A3']);
  });

  test('types brought back by a comment', () => {
    const text = '/// <reference lib="dom" />\nexport const x = 1;';
    expect(oneFile('src/rig/planted.ts', text)).toEqual(['A3']);
  });

  test('the same is allowed elsewhere, and words are only words', () => {
    expect(oneFile('src/views/planted.ts', 'export const x = () => document.title;')).toEqual([]);
    const words = `
      // document, window, Math.random()
      export interface Sheet { document: string; console(): void }
      export const read = (document: string, at: string) => ({ window: document, when: new Date(at) });
      export const text = 'performance.now()';
      export const inner = (sheet: Sheet) => sheet.document;`;
    expect(oneFile('src/layout/planted.ts', words)).toEqual([]);
  });
});

test.each([
  ['no ending', "import { mm } from './length';\nexport const x = mm;"],
  ['no such file', "import './missing.ts';\nexport const x = 1;"],
  ['put together at run time', 'export const x = (name: string) => import(`./` + name);'],
  ['a pattern', "export const x = import.meta.glob('./*.ts');"],
  ['a file that is no program', 'export const = 1;'],
])('A4: an import is written out in full: %s', (_, text) => {
  expect(oneFile('src/units/planted.ts', text)).toContain('A4');
});

test.each([
  ['an index', 'src/units/index.ts', 'export const x = 1;'],
  ['everything passed on', 'src/units/planted.ts', "export * from './length.ts';"],
  ['names passed on', 'src/units/planted.ts', "import { mm } from './length.ts';\nexport { mm };"],
  ['types passed on', 'src/units/planted.ts', "export type { mm } from './length.ts';"],
])('A5: no file only passes on exports: %s', (_, path, text) => {
  expect(oneFile(path, text)).toEqual(['A5']);
});

test.each(['utils', 'helpers', 'common', 'types', 'lib'])(
  'A6: no folder or file is called %s',
  (name) => {
    expect(oneFile(`src/units/${name}/planted.ts`, 'export const x = 1;')).toEqual(['A6']);
    expect(oneFile(`src/units/${name}.ts`, 'export const x = 1;')).toEqual(['A6']);
  },
);

test('A7: src/ holds rooms of the table and no loose file', () => {
  expect(oneFile('src/planted.ts', 'export const x = 1;')).toEqual(['A7']);
  expect(oneFile('src/extras/planted.ts', 'export const x = 1;')).toEqual(['A7']);
});

test('A8: files do not import each other in a circle, types included', () => {
  const circle = {
    'src/units/a.ts': "import type { B } from './b.ts';\nexport type A = B;",
    'src/units/b.ts': "import { c } from './c.ts';\nexport type B = typeof c;",
    'src/units/c.ts': "import type { A } from './a.ts';\nexport const c: A | 1 = 1;",
  };
  expect(rulesBroken(circle)).toEqual(['A8']);
  const itself = "import type { A } from './a.ts';\nexport type B = A;\nexport type A = 1;";
  expect(oneFile('src/units/a.ts', itself)).toEqual(['A8']);
});

test('A9: a file has at most 300 lines of code, comments and blank lines not counted', () => {
  const lines = (count: number) => `/* why\n   and how */\n\n${'void 1;\n'.repeat(count)}`;
  expect(oneFile('src/units/planted.ts', lines(300))).toEqual([]);
  expect(oneFile('src/units/planted.ts', lines(301))).toEqual(['A9']);
});

test('A10: the top level holds only what the list names', () => {
  expect(topLevelFaults(['src', 'dist', 'notes.txt'], ['dist']).map(({ path }) => path)).toEqual([
    'notes.txt',
  ]);
});
