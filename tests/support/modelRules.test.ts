import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { rulesDefined, rulesQuoted } from './modelRules.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

const textsOf = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));

const all = (sets: readonly ReadonlySet<string>[]): ReadonlySet<string> =>
  new Set(sets.flatMap((set) => [...set]));

/** The rooms of the motion model and of what stands about it, with how many rules each has at least. */
const rooms = [
  ['rig', 55],
  ['player', 15],
] as const;

describe('numbered rules of the models', () => {
  test.each(rooms)(
    'every rule that is defined in %s is quoted by a test of that room',
    (room, least) => {
      const defined = all(textsOf(`src/${room}`).map(rulesDefined));
      const quoted = all(textsOf(`tests/${room}`).map(rulesQuoted));
      expect(defined.size).toBeGreaterThanOrEqual(least);
      expect([...defined].filter((rule) => !quoted.has(rule))).toEqual([]);
    },
  );

  test('a rule is seen where it is defined, and not where it is mentioned', () => {
    const defined = (text: string) => [...rulesDefined(text)];
    expect(defined('/** M8 A clip grips the hoop. */')).toEqual(['M8']);
    expect(defined(' * K2 A mic must stay out of shells (K4).')).toEqual(['K2']);
    expect(defined(' * Rules L1 to L4: legs at rest.')).toEqual(['L1', 'L2', 'L3', 'L4']);
    expect(defined('/** Rule S1: where the sticks meet. */')).toEqual(['S1']);
    expect(defined('// A clip grips the hoop (M8).\nconst M9 = 1;')).toEqual([]);
  });

  test('a quoted range is taken apart', () => {
    expect([...rulesQuoted("it('T1-T3: worked by hand', () => {})")]).toEqual(['T1', 'T2', 'T3']);
    expect([...rulesQuoted('rules S1 to S3 and M6')]).toEqual(['S1', 'S2', 'S3', 'M6']);
    expect([...rulesQuoted('no rule at all')]).toEqual([]);
  });
});
