import { describe, expect, it } from 'vitest';
import { linesOf } from '../../src/cabling/loomLines.ts';
import type { Run } from '../../src/cabling/run.ts';

const at = (x: number, y: number) => ({ x, y });
const run = (mic: string, route: Run['route'], through: Run['through'] = []): Run => ({
  mic,
  input: 1,
  route,
  parts: [],
  total: 0,
  through,
});

describe('the lines of a loom', () => {
  const good = run('good', [at(0, 0), at(100, 0), at(200, 0)]);
  const lost = run('lost', [at(100, 90), at(100, 0), at(200, 0)], ['kick']);
  const stateOf = (runs: readonly Run[]) =>
    Object.fromEntries(
      linesOf(runs, undefined).stretches.map(({ mics, hasNoWay }) => [mics.join(' '), hasNoWay]),
    );

  it('are no way where no cable in them has one, and a way for all where one has', () => {
    expect(stateOf([good, lost])).toEqual({ good: false, lost: true, 'good lost': false });
    expect(stateOf([lost])).toEqual({ lost: true });
  });

  it('are other lines once their cables have lost their way, though they lie where they lay', () => {
    const free = { ...lost, through: [] };
    const before = linesOf([good, free], undefined);
    const after = linesOf([good, lost], before);
    const lineOf = (mic: string, { stretches }: typeof before) =>
      stretches.find(({ mics }) => mics.length === 1 && mics[0] === mic);
    expect(lineOf('lost', after)).not.toBe(lineOf('lost', before));
    expect(lineOf('good', after)).toBe(lineOf('good', before));
  });
});
