import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';

/** The part of the linter's report that is read here. */
interface Report {
  diagnostics: { code: { value: string }; location: { path: string } }[];
}

// The linter and the compiler keep rules that no other test does, so each is seen here to find a planted fault.
const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'strokespace-planted-'));
afterAll(() => rmSync(folder, { recursive: true }));

function plant(files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

function run(program: string, words: readonly string[]): string {
  const script = join(root, 'node_modules', program);
  return spawnSync(process.execPath, [script, ...words], { cwd: folder, encoding: 'utf8' }).stdout;
}

describe('the linter finds', () => {
  const longBody = '  read();\n'.repeat(61);
  const planted = {
    noExcessiveLinesPerFunction: `declare const read: () => void;\nexport function f() {\n${longBody}}`,
    useMaxParams: 'export const f = (a: 1, b: 1, c: 1, d: 1, e: 1) => [a, b, c, d, e];',
    noExplicitAny: 'export const f = (x: any) => x;',
    noNonNullAssertion: 'export const f = (x: { y: 1 } | null) => x!.y;',
    noConsole: 'console.log(1);',
    noBarrelFile: "export { f } from './noExplicitAny.ts';",
    noReExportAll: "export * from './noExplicitAny.ts';",
    noImportCycles: "import type { A } from './circle.ts';\nexport type B = A;",
    noFloatingPromises: 'export const f = async () => 1;\nf();',
    noMisusedPromises: 'export const f = async () => 1;\nexport const g = () => (f() ? 1 : 2);',
    noUnusedImports: "import { f } from './noExplicitAny.ts';",
    noUndeclaredDependencies: "import x from 'left-out';\nexport const y = x;",
    useImportExtensions: "import { f } from './noExplicitAny';\nexport const x = f;",
    useNodejsImportProtocol: "import { join } from 'path';\nexport const x = join;",
  };
  plant(
    Object.fromEntries(Object.entries(planted).map(([rule, text]) => [`src/rig/${rule}.ts`, text])),
  );
  plant({
    'src/rig/circle.ts': "import type { B } from './noImportCycles.ts';\nexport type A = B;",
    'src/rig/sound.ts': 'export const f = (x: number) => x;\n',
    'tests/skipped.test.ts': "import { test } from 'vitest';\ntest.skip('x', () => {});\n",
    'tests/focused.test.ts': "import { test } from 'vitest';\ntest.only('x', () => {});\n",
  });
  cpSync(join(root, 'biome.json'), join(folder, 'biome.json'));
  cpSync(join(root, 'package.json'), join(folder, 'package.json'));
  const words = ['lint', '--vcs-enabled=false', '--max-diagnostics=none', '--reporter=rdjson', '.'];
  const report: Report = JSON.parse(run('@biomejs/biome/bin/biome', words));
  const pathsOf = (rule: string) =>
    report.diagnostics
      .filter(({ code }) => code.value.endsWith(`/${rule}`))
      .map(({ location }) => location.path);

  test.each(Object.keys(planted))('%s', (rule) => {
    expect(pathsOf(rule)).toContain(`src/rig/${rule}.ts`);
  });

  test('noSkippedTests and noFocusedTests', () => {
    expect(pathsOf('noSkippedTests')).toEqual(['tests/skipped.test.ts']);
    expect(pathsOf('noFocusedTests')).toEqual(['tests/focused.test.ts']);
  });

  test('nothing in a sound file', () => {
    const paths = report.diagnostics.map(({ location }) => location.path);
    expect(paths).not.toContain('src/rig/sound.ts');
  });
});

describe('the compiler refuses', () => {
  const pure = {
    'the DOM': 'export const x = document.title;',
    'the clock of the page': 'export const x = performance.now();',
    'the console': 'console.log(1);\nexport const x = 1;',
    'a timer': 'setTimeout(() => 1, 2);\nexport const x = 1;',
    Node: 'export const x = process.argv;',
    'an index without a check': 'export const f = (x: number[]): number => x[0];',
    'undefined for what may be left out': 'export const x: { y?: 1 } = { y: undefined };',
    'a type imported as a value': "import { A } from './sound.ts';\nexport type B = A;",
  };
  const names = Object.keys(pure).map((name) => name.replaceAll(' ', '-'));
  plant(
    Object.fromEntries(Object.values(pure).map((text, at) => [`pure/rig/${names[at]}.ts`, text])),
  );
  plant({
    'pure/rig/sound.ts': 'export type A = number;\nexport const f = (x: A): A => x + 1;\n',
    'pure/tsconfig.json': JSON.stringify({
      extends: join(root, 'src', 'tsconfig.pure.json'),
      include: ['rig'],
    }),
  });
  const output = run('typescript/bin/tsc', ['-p', 'pure/tsconfig.json', '--pretty', 'false']);

  test.each(names)('%s', (name) => {
    expect(output).toContain(`rig/${name}.ts(`);
  });

  test('nothing in a sound file', () => {
    expect(output).not.toContain('sound.ts(');
  });
});
