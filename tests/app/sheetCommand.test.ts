import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { asksForSheet, sheetCommand } from '../../src/app/sheetCommand.ts';
import { demo } from '../../src/layout/catalogue/kits/demo.ts';
import { writeLayout } from '../../src/layout/read.ts';
import { openPdf, wordsOf } from '../sheet/writers/readPdf.ts';

/** Runs the command on files that are only in memory. */
async function run(given: readonly string[], isFull = false) {
  const complained: string[] = [];
  const written = new Map<string, string | Uint8Array>();
  const code = await sheetCommand(given, {
    read: (file) => {
      if (file === 'demo.json') return writeLayout(demo('demo'));
      if (file === 'broken.json') return '{"schema": 4}';
      throw new Error('no such file');
    },
    write: (file, content) => {
      if (isFull) throw new Error('the disk is full');
      written.set(file, content);
    },
    complain: (text) => complained.push(text),
  });
  return { code, written, complained: complained.join('') };
}

describe('the sheet command', () => {
  test('writes all sheets as PDF on the paper that is asked for', async () => {
    const paper = ['--paper', 'letter', '--orientation', 'portrait'];
    const { code, written } = await run(['demo.json', '--sheet', 'pdf', 'out.pdf', ...paper]);
    const bytes = written.get('out.pdf');
    if (!(bytes instanceof Uint8Array)) throw new Error('no PDF was written');
    const pages = await openPdf(bytes);
    expect(code).toBe(0);
    expect(pages[0]?.view).toEqual([0, 0, 612, 792]);
    const titles = await Promise.all(pages.map(wordsOf));
    for (const title of ['Placement', 'Elevations', 'Stands and mics', 'Sign-off', 'Set-up list']) {
      expect(titles.some((words) => words.includes(title))).toBe(true);
    }
  });

  test('writes the plan as SVG on A4 and as DXF', async () => {
    const svg = await run(['--sheet', 'svg', 'plan.svg', 'demo.json']);
    expect(svg.written.get('plan.svg')).toMatch(/^<svg [^>]*width="297mm" height="210mm"/);
    const dxf = await run(['demo.json', '--sheet', 'dxf', 'plan.dxf']);
    const text = dxf.written.get('plan.dxf');
    expect(new DxfParser().parseSync(String(text))?.entities.length).toBeGreaterThan(100);
  });

  test('takes paper, orientation and side in capitals too', async () => {
    const options = ['--paper', 'A4', '--orientation', 'Portrait', '--from', 'PLAYER'];
    const { code, written } = await run(['demo.json', '--sheet', 'svg', 'plan.svg', ...options]);
    expect(code).toBe(0);
    expect(written.get('plan.svg')).toMatch(/^<svg [^>]*width="210mm" height="297mm"/);
  });

  test.each([
    ['no format', ['demo.json', '--sheet'], 'Expected one of pdf, svg, dxf and a file to write'],
    ['no file to write', ['demo.json', '--sheet', 'pdf'], 'and a file to write'],
    ['an option for a file', ['demo.json', '--sheet', 'pdf', '--paper'], 'and a file to write'],
    ['another format', ['demo.json', '--sheet', 'gif', 'x'], 'Expected one of pdf, svg, dxf'],
    ['another paper', ['demo.json', '--sheet', 'pdf', 'x', '--paper', 'a3'], 'a4, letter'],
    ['no paper', ['demo.json', '--sheet', 'pdf', 'x', '--paper'], 'a4, letter'],
    ['another side', ['demo.json', '--sheet', 'pdf', 'x', '--from', 'above'], 'house or player'],
    ['an unknown option', ['demo.json', '--sheet', 'pdf', 'x', '--json'], 'Unknown option --json'],
    ['no layout', ['--sheet', 'pdf', 'x'], 'Usage'],
    ['a file that is not there', ['gone.json', '--sheet', 'pdf', 'x'], "gone.json can't be read"],
    ['a broken layout', ['broken.json', '--sheet', 'pdf', 'x'], 'broken.json is not a layout'],
  ])('%s: says what was expected and writes nothing', async (_, given, said) => {
    const { code, written, complained } = await run(given);
    expect(code).toBe(2);
    expect(complained).toContain(said);
    expect(written.size).toBe(0);
  });

  test('a file that can not be written is said', async () => {
    const { code, complained } = await run(['demo.json', '--sheet', 'svg', 'x.svg'], true);
    expect(code).toBe(2);
    expect(complained).toBe("x.svg can't be written: the disk is full\n");
  });

  test('is asked for by its option alone', () => {
    expect(asksForSheet(['demo.json', '--sheet', 'pdf', 'x'])).toBe(true);
    expect(asksForSheet(['demo.json', '--json'])).toBe(false);
  });

  // Bundles the command line, which takes some seconds.
  test('writes a file from the command line, named from where the user is', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'strokespace-sheet-'));
    try {
      writeFileSync(join(folder, 'demo.json'), writeLayout(demo('demo')));
      const root = fileURLToPath(new URL('../..', import.meta.url));
      const launcher = join(root, 'src', 'app', 'launch', 'runTypeScript.mjs');
      const entry = join(root, 'src', 'app', 'commandLine.ts');
      const { status, stderr } = spawnSync(
        process.execPath,
        [launcher, entry, 'demo.json', '--sheet', 'pdf', 'demo.pdf'],
        { cwd: root, env: { ...process.env, INIT_CWD: folder }, encoding: 'utf8' },
      );
      expect(stderr).toBe('');
      expect(status).toBe(0);
      const pages = await openPdf(new Uint8Array(readFileSync(join(folder, 'demo.pdf'))));
      expect(pages.length).toBeGreaterThanOrEqual(5);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
