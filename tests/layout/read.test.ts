import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fivePieceTwoRacks } from '../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { type Layout, SCHEMA_VERSION } from '../../src/layout/layout.ts';
import { migrations } from '../../src/layout/migrations/migrate.ts';
import type { Problem } from '../../src/layout/problem.ts';
import {
  checkLayout,
  MOST_CHARACTERS,
  type ReadResult,
  readLayout,
  writeLayout,
} from '../../src/layout/read.ts';
import { randomKit } from '../support/randomKit.ts';

const kit = fivePieceTwoRacks('kit');
const at = (list: readonly { readonly id: string }[], id: string): number =>
  list.findIndex((entry) => entry.id === id);
const RACK = at(kit.pieces, 'rack-1');
const CRASH = at(kit.pieces, 'crash-1');
const KICK_MIC = at(kit.mics, 'mic-kick-in');
const PLATE = at(kit.mics, 'mic-kick-plate');
const RACK_MIC = at(kit.mics, 'mic-rack-1');

/** The kit as plain JSON with the value at a path replaced; `undefined` takes the field away. */
function withValue(path: readonly (string | number)[], value: unknown): unknown {
  const copy: unknown = JSON.parse(JSON.stringify(kit));
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((inner, step) => Reflect.get(Object(inner), step), copy);
  const last = path.at(-1);
  if (last === undefined) throw new Error('an empty path');
  if (value === undefined) Reflect.deleteProperty(Object(holder), last);
  else Reflect.set(Object(holder), last, value);
  return copy;
}

function problemsOf(result: ReadResult): readonly Problem[] {
  return result.ok ? [] : result.problems;
}

const onlyProblem = (value: unknown): Problem | undefined => {
  const problems = problemsOf(checkLayout(value));
  expect(problems).toHaveLength(1);
  return problems[0];
};

describe('a layout file is read back as it was written', () => {
  test('for every random kit', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        expect(readLayout(writeLayout(layout))).toEqual({ ok: true, layout });
      }),
      { numRuns: 60 },
    );
  });

  test('whatever the order of its fields, it is written in one way', () => {
    const reversed = Object.fromEntries(Object.entries(kit).toReversed()) as Layout;
    expect(writeLayout(reversed)).toBe(writeLayout(kit));
  });

  test('a byte order mark in front is no fault', () => {
    expect(readLayout(`\uFEFF${writeLayout(kit)}`)).toEqual({ ok: true, layout: kit });
  });

  test('a layout that fails its own check is still written', () => {
    const broken = { ...kit, margin: -5 };
    expect(JSON.parse(writeLayout(broken))).toEqual(broken);
  });
});

describe('a bad file gets a message with its path and what was expected', () => {
  test('not JSON', () => {
    const [problem] = problemsOf(readLayout('{"schema": 1,'));
    expect(problem).toMatchObject({
      code: 'not-json',
      path: '',
      expected: 'JSON text',
    });
  });

  test('larger than a layout can be', () => {
    const [problem] = problemsOf(readLayout(' '.repeat(MOST_CHARACTERS + 1)));
    expect(problem).toMatchObject({ code: 'too-large', expected: 'at most 8000000 characters' });
  });

  test.each([[[]], ['text'], [null], [7], [undefined]])('%j is not a layout', (value) => {
    expect(onlyProblem(value)).toMatchObject({
      code: 'wrong-type',
      path: '',
      expected: 'a layout, a JSON object',
    });
  });

  test('a newer version', () => {
    const problem = onlyProblem({ ...kit, schema: SCHEMA_VERSION + 1 });
    expect(problem).toMatchObject({
      code: 'newer-version',
      path: 'schema',
      actual: `${SCHEMA_VERSION + 1}`,
    });
    expect(problem?.expected).toContain(`up to ${SCHEMA_VERSION}`);
  });

  test.each([
    [undefined, 'missing'],
    ['1', 'wrong-type'],
    [0, 'wrong-type'],
    [1.5, 'wrong-type'],
  ])('version %j is none', (schema, code) => {
    expect(onlyProblem(withValue(['schema'], schema))).toMatchObject({ code, path: 'schema' });
  });

  test.each([
    ['a field is missing', ['pieces', RACK, 'diameter'], undefined, 'missing: a number'],
    ['a field too many', ['pieces', RACK, 'colour'], 1, 'unknown-field: no field of this name'],
    ['a wrong type', ['pieces', RACK, 'diameter'], '10', 'wrong-type: a number'],
    ['a drum of 0', ['pieces', RACK, 'diameter'], 0, 'out-of-range: at least 100'],
    ['a drum of 20 m', ['pieces', RACK, 'diameter'], 20_000, 'out-of-range: at most 800'],
    ['not finite', ['margin'], Number.POSITIVE_INFINITY, 'not-finite: a finite number'],
    ['not a number', ['pieces', RACK, 'x'], Number.NaN, 'not-finite: a finite number'],
    ['no such kind', ['pieces', RACK, 'kind'], 'gong', 'wrong-value: "snare"'],
    ['no such choice', ['units'], 'ft', 'wrong-value: one of "mm", "in"'],
    ['five legs on a stand', ['pieces', CRASH, 'support', 'legs'], 5, 'wrong-value: one of 2, 3'],
    ['half an input', ['mics', KICK_MIC, 'input'], 1.5, 'wrong-type: a whole number'],
    ['a list that is none', ['mics'], {}, 'wrong-type: a list'],
    ['an id with capitals', ['pieces', RACK, 'id'], 'Rack 1', 'bad-format: lower-case'],
    ['an empty name', ['name'], '', 'out-of-range: at least 1 character'],
    ['a name of 1 MB', ['name'], 'x'.repeat(1_000_000), 'out-of-range: at most 80 characters'],
    ['no date', ['venue', 'date'], '2031-02-30', 'bad-format: YYYY-MM-DD'],
    [
      'a class nobody knows (L5)',
      ['mics', KICK_MIC, 'micClass'],
      'xyz',
      'no-such-thing: mic class',
    ],
    [
      'a piece not there (L5)',
      ['mics', KICK_MIC, 'hears', 0],
      'xyz',
      'no-such-thing: id of a piece',
    ],
    [
      'a drum not there (L4)',
      ['mics', RACK_MIC, 'mount', 'drum'],
      'xyz',
      'no-such-thing: rack tom',
    ],
    [
      'a clip on a kick (L4)',
      ['mics', RACK_MIC, 'mount', 'drum'],
      'kick',
      'no-such-thing: rack tom',
    ],
    [
      'a plate in a tom (L4)',
      ['mics', PLATE, 'mount', 'kick'],
      'rack-1',
      'no-such-thing: kick drum',
    ],
    [
      'held by nothing (L6)',
      ['pieces', RACK, 'support', 'by'],
      'xyz',
      'no-such-thing: another piece',
    ],
    [
      'held by itself (L6)',
      ['pieces', RACK, 'support', 'by'],
      'rack-1',
      'held-in-a-circle: not held',
    ],
    ['an id twice (L1)', ['mics', KICK_MIC, 'id'], 'kick', 'id-twice: pieces[1].id has this one'],
  ] as const)('%s', (_, path, value, wanted) => {
    const [code, expected] = wanted.split(': ');
    const problem = onlyProblem(withValue(path, value));
    const shown = path.reduce<string>(
      (text, step) => (typeof step === 'number' ? `${text}[${step}]` : `${text}.${step}`),
      '',
    );
    expect(problem).toMatchObject({ code, path: shown.slice(1) });
    expect(problem?.expected).toContain(expected);
    expect(problem?.actual.length).toBeLessThan(100);
  });

  test('L1: what refers to an id that two pieces share is not an error of its own', () => {
    // The kick's mics, a plate in it among them, then also refer to a rack tom; nothing else refers to that tom.
    const twice = {
      ...kit,
      pieces: kit.pieces.map((piece, i) => (i === RACK ? { ...piece, id: 'kick' } : piece)),
      mics: kit.mics
        .filter(({ mount }) => !(mount.kind === 'clip' && mount.drum === 'rack-1'))
        .map((mic) => ({ ...mic, hears: mic.hears.filter((id) => id !== 'rack-1') })),
    };
    expect(onlyProblem(twice)).toMatchObject({
      code: 'id-twice',
      path: `pieces[${RACK}].id`,
      actual: '"kick"',
    });
  });

  test('1e999, which JSON reads as infinite', () => {
    const text = writeLayout(kit).replace('"margin": 50', '"margin": 1e999');
    expect(problemsOf(readLayout(text))).toMatchObject([{ code: 'not-finite', path: 'margin' }]);
  });

  test('10,000 pieces are refused before any of them is read', () => {
    const pieces = Array.from({ length: 10_000 }, () => kit.pieces[RACK]);
    expect(onlyProblem({ ...kit, pieces })).toMatchObject({
      code: 'too-many',
      path: 'pieces',
      expected: 'at most 80 entries',
      actual: 'a list of 10000',
    });
  });

  test.each(['__proto__', 'constructor', 'prototype'])('a field named %s', (key) => {
    const text = writeLayout(kit).replace('"venue": {', `"venue": { "${key}": {"x": 1},`);
    expect(problemsOf(readLayout(text))).toMatchObject([
      { code: 'forbidden-key', path: `venue.${key}` },
    ]);
    expect(Reflect.get({}, 'x')).toBeUndefined();
  });

  test('nesting without end', () => {
    const deep = `${'['.repeat(5000)}${']'.repeat(5000)}`;
    const [problem] = problemsOf(readLayout(`{"schema": 1, "pieces": ${deep}}`));
    expect(problem).toMatchObject({ code: 'too-deep' });
  });

  test('a value that holds itself', () => {
    const ring: Record<string, unknown> = { ...kit };
    ring.venue = ring;
    expect(problemsOf(checkLayout(ring))[0]).toMatchObject({ code: 'too-deep' });
  });

  test('L2: a second throne', () => {
    const pieces = [...kit.pieces, { ...kit.pieces[0], id: 'throne-2' }];
    expect(onlyProblem({ ...kit, pieces })).toMatchObject({
      code: 'second-throne',
      path: `pieces[${kit.pieces.length}].kind`,
    });
  });

  test('L6: pieces that hold each other in a circle', () => {
    const held = (id: string, by: string) => ({
      ...kit.pieces[RACK],
      id,
      support: { kind: 'held', by },
    });
    const pieces = [...kit.pieces, held('a', 'c'), held('b', 'a'), held('c', 'b')];
    const problems = problemsOf(checkLayout({ ...kit, pieces }));
    expect(problems.map(({ code }) => code)).toEqual(Array(3).fill('held-in-a-circle'));
  });

  test('L3: an own class with the id of a built-in one', () => {
    const own = {
      id: 'ribbon',
      name: 'Mine',
      length: 100,
      diameter: 30,
      address: 'end',
      patternA: 0.5,
      type: 'dynamic',
      phantom: false,
      connector: 'straight',
      mass: 0.2,
    };
    expect(onlyProblem({ ...kit, ownClasses: [own] })).toMatchObject({
      code: 'built-in-id',
      path: 'ownClasses[0].id',
    });
  });

  test('many problems: the first twenty, and how many more', () => {
    const pieces = kit.pieces.map((piece) => ({ ...piece, name: 1, a: 1, b: 2 }));
    const result = checkLayout({ ...kit, pieces });
    expect(problemsOf(result)).toHaveLength(20);
    expect(result).toMatchObject({ ok: false, more: pieces.length * 3 - 20 });
  });

  test('text that looks like markup is a name like any other', () => {
    const result = checkLayout({ ...kit, name: '<img src=x onerror=alert(1)>' });
    expect(result.ok).toBe(true);
  });

  test('no value whatever makes it throw or be taken for a layout', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(checkLayout(value).ok).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  test('any field of a kit replaced by any JSON value is refused with a path, or is good', () => {
    const paths = leaves(kit);
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (path, value) => {
        const result = checkLayout(withValue(path, value));
        expect(result.ok || result.problems.every(({ expected }) => expected !== '')).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

describe('every released version can be read for ever', () => {
  const folder = 'tests/fixtures/layouts';
  const files = readdirSync(folder);
  const versions = Array.from({ length: SCHEMA_VERSION }, (_, index) => index + 1);

  test.each(versions)('version %i has a stored example', (version) => {
    expect(files.filter((file) => file.startsWith(`v${version}-`))).not.toEqual([]);
  });

  test.each(files)('%s is read', (file) => {
    const text = readFileSync(`${folder}/${file}`, 'utf8');
    expect(JSON.parse(text)).toMatchObject({ schema: Number(/^v(\d+)-/.exec(file)?.[1]) });
    expect(readLayout(text)).toMatchObject({ ok: true, layout: { schema: SCHEMA_VERSION } });
  });

  test('there is one step from each older version to the next', () => {
    expect([...migrations.keys()].toSorted((a, b) => a - b)).toEqual(versions.slice(0, -1));
  });
});

function leaves(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (Array.isArray(value)) return value.flatMap((entry, i) => leaves(entry, [...path, i]));
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, entry]) => leaves(entry, [...path, key]));
  }
  return [path];
}
