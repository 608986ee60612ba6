import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { reportCommand } from '../../src/app/reportCommand.ts';
import { demo } from '../../src/layout/catalogue/kits/demo.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { writeLayout } from '../../src/layout/read.ts';
import { nameOf } from '../../src/views/words/nameOf.ts';
import { farFromStand } from '../report/cantStaySamples.ts';
import { clipInDrum } from '../report/clipInDrum.ts';
import { sample } from '../storage/sample.ts';

/** Runs the command on files that are only in memory. */
function run(given: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const printed: string[] = [];
  const complained: string[] = [];
  const code = reportCommand(given, {
    read: (file) => {
      const text = files[file];
      if (text === undefined) throw new Error('no such file');
      return text;
    },
    print: (text) => printed.push(text),
    complain: (text) => complained.push(text),
  });
  return { code, printed: printed.join(''), complained: complained.join('') };
}

const clear = demo('demo');
/** A clip turned to the player's side of its rack tom is struck: common practice, no source. */
const struck: Layout = {
  ...clear,
  mics: clear.mics.map((mic) =>
    mic.mount.kind === 'clip' && mic.name === 'Rack 1'
      ? { ...mic, mount: { ...mic.mount, angle: -90 } }
      : mic,
  ),
};

describe('the report command', () => {
  it('ends with 0 when no mic is struck, and prints every mic', () => {
    const { code, printed, complained } = run(['a.json'], { 'a.json': writeLayout(clear) });
    expect(code).toBe(0);
    expect(complained).toBe('');
    for (const { name } of clear.mics) expect(printed).toContain(name);
    for (const title of ['Clearances', 'Runs', 'Findings']) expect(printed).toContain(title);
  });

  it('ends with 1 when a mic is struck, and names it first with its move and what to do', () => {
    const { code, printed } = run(['a.json'], { 'a.json': writeLayout(struck) });
    expect(code).toBe(1);
    const [, , , , first] = printed.split('\n');
    expect(first).toMatch(/^ {2}STRUCK {2}Rack 1: \d+ mm too close: /);
    expect(printed).toContain('STOP  Rack 1 would be struck');
    expect(printed).toContain('turn the clip round the rim');
  });

  it('tells of a mic that stands in its drum with the first line, and never calls it clear', () => {
    const { layout, mic } = clipInDrum(clear);
    const { code, printed } = run(['a.json'], { 'a.json': writeLayout(layout) });
    expect(code).toBe(1);
    const lines = printed.split('\n');
    expect(lines[1]).toContain(': 0 struck, 1 in the way, 0 tight, ');
    const own = lines.find((line) => line.includes(`  ${nameOf(layout, mic.id)}: `));
    expect(own).toMatch(/^ {2}IN THE WAY {2}.*: in .*, \d+ mm deep$/);
    expect(lines.indexOf(own ?? '')).toBe(4);
    expect(lines[5]).toMatch(/^ {10}From what moves: \d+ mm clear \(/);
  });

  it('ends with 1 when a stand cannot hold its mic, and says so before every clear one', () => {
    const { layout, id } = farFromStand(clear);
    const { code, printed } = run(['a.json'], { 'a.json': writeLayout(layout) });
    expect(code).toBe(1);
    const lines = printed.split('\n');
    expect(lines[4]).toContain(nameOf(layout, id));
    expect(lines[4]).toMatch(/^ {2}WON'T HOLD {2}.*: out of reach by \d+ mm; tips over$/);
  });

  it.each([
    ['inputs', 'Channel,Box input,'],
    ['cables', 'Channel,Box input,'],
    ['pull', 'What,Which,'],
    ['check', 'Channel,Box input,'],
  ])('--csv %s prints one table by RFC 4180', (table, start) => {
    const files = { 'a.json': writeLayout(clear) };
    for (const given of [
      ['a.json', '--csv', table],
      ['--csv', table, 'a.json'],
    ]) {
      const { code, printed } = run(given, files);
      expect(code).toBe(0);
      expect(printed.startsWith(start)).toBe(true);
      expect(printed.endsWith('\r\n')).toBe(true);
    }
  });

  it.each([
    [['a.json', '--csv'], 'one of inputs, cables, pull, check'],
    [['a.json', '--csv', 'mics'], 'one of inputs, cables, pull, check'],
    [['a.json', '--csv', 'pull', '--json'], 'either --json or --csv'],
  ])('%j is refused', (given, reason) => {
    const { code, printed, complained } = run(given, { 'a.json': writeLayout(clear) });
    expect([code, printed]).toEqual([2, '']);
    expect(complained).toContain(reason);
  });

  it.each([0, 1])('the JSON has the same exit code (%d)', (code) => {
    const files = { 'a.json': writeLayout(code === 0 ? clear : struck) };
    for (const given of [
      ['a.json', '--json'],
      ['--json', 'a.json'],
    ]) {
      const ran = run(given, files);
      expect(ran.code).toBe(code);
      expect(JSON.parse(ran.printed)).toMatchObject({
        format: 'strokespace-report',
        version: 2,
        verdict: code === 0 ? 'clear' : 'struck',
      });
    }
  });

  it('an empty deck has a report, too', () => {
    const { code, printed } = run(['a.json'], { 'a.json': writeLayout(sample('one')) });
    expect(code).toBe(0);
    expect(printed).toContain('No mics.');
    expect(printed).toContain('No cables.');
  });

  it('ends with 2 on a bad file, and lists path and what was expected', () => {
    const bad = JSON.stringify({ ...clear, margin: 'wide', surprise: 1 });
    const { code, printed, complained } = run(['bad.json'], { 'bad.json': bad });
    expect(code).toBe(2);
    expect(printed).toBe('');
    expect(complained).toContain('bad.json is not a layout:');
    expect(complained).toMatch(/\n {2}margin: expected .+, found "wide"\n/);
    expect(complained).toMatch(/\n {2}surprise: expected .+\n/);
  });

  it.each([
    [
      'no file',
      [],
      'Usage: npm run report -- FILE [--json | --csv inputs|cables|pull|check | --sheet pdf|svg|dxf OUT]',
    ],
    ['two files', ['a.json', 'b.json'], 'Usage'],
    ['an option that there is not', ['a.json', '--xml'], 'Unknown option --xml'],
    ['a file that is not there', ['a.json'], "a.json can't be read: no such file"],
  ])('ends with 2 on %s', (_, given, message) => {
    const { code, complained } = run(given);
    expect(code).toBe(2);
    expect(complained).toContain(message);
  });

  it('control characters of a file do not reach the terminal', () => {
    const name = 'Hall\u001b[2J\u0007\u009b';
    const good = run(['a.json'], { 'a.json': writeLayout({ ...clear, name }) });
    const bad = run(['a.json'], { 'a.json': '{"schema":1,"\\u001b[2J":1}' });
    for (const text of [good.printed, bad.complained]) {
      expect(text.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
    }
  });

  it('runs as `npm run report` does, and hands on the exit code', () => {
    const folder = mkdtempSync(join(tmpdir(), 'report-'));
    try {
      writeFileSync(join(folder, 'struck.json'), writeLayout(struck));
      writeFileSync(join(folder, 'huge.json'), ' '.repeat(8_000_001));
      const root = fileURLToPath(new URL('../..', import.meta.url));
      const launch = (file: string) =>
        spawnSync(
          process.execPath,
          ['src/app/launch/runTypeScript.mjs', 'src/app/commandLine.ts', file, '--json'],
          { cwd: root, encoding: 'utf8', env: { ...process.env, INIT_CWD: folder } },
        );
      const ran = launch('struck.json');
      expect(ran.status).toBe(1);
      expect(JSON.parse(ran.stdout)).toMatchObject({ verdict: 'struck' });
      const huge = launch('huge.json');
      expect(huge.status).toBe(2);
      expect(huge.stderr).toContain('expected at most 8000000 bytes, found 8000001');
    } finally {
      rmSync(folder, { recursive: true });
    }
  }, 240_000);
});
