import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { rulesDefined, rulesQuoted, testNames } from './modelRules.ts';
import { roomTable } from './roomTable.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The rules of all files of a folder, as `rulesOf` finds them in each. */
const rulesIn = (
  folder: string,
  rulesOf: (text: string, path: string) => ReadonlySet<string>,
): ReadonlySet<string> =>
  new Set(
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name))
      .flatMap((path) => [...rulesOf(readFileSync(path, 'utf8'), path)]),
  );

const quotedInNames = (text: string, path: string): ReadonlySet<string> =>
  rulesQuoted(testNames(path, text).join('\n'));

/** How many rules are defined in the rooms that define any, at least: to find none is a fault of this test. */
const least: Readonly<Record<string, number>> = {
  acoustics: 40,
  app: 20,
  cabling: 55,
  clearance: 15,
  editor: 25,
  geometry: 20,
  layout: 10,
  patch: 50,
  player: 15,
  report: 25,
  rig: 55,
  sheet: 4,
  storage: 25,
  units: 4,
  views: 5,
};

/** What only a browser does, as the service worker, is tested there. */
const alsoIn: Readonly<Record<string, string>> = { app: 'e2e' };

describe('numbered rules of the models', () => {
  test.each(Object.keys(roomTable))(
    'every rule that is defined in %s is quoted in the name of a test of that room',
    (room) => {
      const defined = rulesIn(`src/${room}`, rulesDefined);
      const tests = [`tests/${room}`, alsoIn[room] ?? []].flat();
      const quoted = new Set(tests.flatMap((folder) => [...rulesIn(folder, quotedInNames)]));
      expect(defined.size).toBeGreaterThanOrEqual(least[room] ?? 0);
      expect([...defined].filter((rule) => !quoted.has(rule))).toEqual([]);
    },
  );

  test('a rule is seen where it is defined, and not where it is mentioned', () => {
    const defined = (text: string) => [...rulesDefined(text)];
    expect(defined('/** M8 A clip grips the hoop. */')).toEqual(['M8']);
    expect(defined(' * K2 A mic must stay out of shells (K4).')).toEqual(['K2']);
    expect(defined(' * Rules L1 to L4: legs at rest.')).toEqual(['L1', 'L2', 'L3', 'L4']);
    expect(defined('/** Rule S1: where the sticks meet. */')).toEqual(['S1']);
    expect(defined(' * - T2 Or a fraction as on a tape measure.')).toEqual(['T2']);
    expect(defined('/** Contours at heights. Rule F2: they err to the safe side.')).toEqual(['F2']);
    expect(defined(' * (rule V1): the left is the right.')).toEqual(['V1']);
    expect(defined('// A clip grips the hoop (M8).\nconst M9 = 1;')).toEqual([]);
    expect(defined(' * The least distance (rule C1), by branch and bound.')).toEqual([]);
  });

  test('a quoted range is taken apart', () => {
    expect([...rulesQuoted("it('T1-T3: worked by hand', () => {})")]).toEqual(['T1', 'T2', 'T3']);
    expect([...rulesQuoted('rules S1 to S3 and M6')]).toEqual(['S1', 'S2', 'S3', 'M6']);
    expect([...rulesQuoted('no rule at all')]).toEqual([]);
  });

  test('only the names of tests quote, each row of a table by its first text', () => {
    const text = `
      // S1 is no name.
      const kit = make('S2');
      describe('S3: a plan', () => {
        it.each([['S4, by hand', 'S5'], [7, 'S6']] as const)('%s', () => expect('S7').toBe(1));
        test.describe.serial(\`S8 \${kit} S9\`, () => {});
      });`;
    expect([...rulesQuoted(testNames('plan.test.ts', text).join('\n'))]).toEqual([
      'S3',
      'S4',
      'S8',
      'S9',
    ]);
  });
});
