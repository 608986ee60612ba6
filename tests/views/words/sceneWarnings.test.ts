import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { Finding } from '../../../src/report/report.ts';
import { sceneWarnings } from '../../../src/views/words/sceneWarnings.ts';
import { signWarnings } from '../../../src/views/words/signWarnings.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('demo');
const report = createAnalyst()(layout);
const finding = (code: Finding['code'], severity: Finding['severity'], id: string): Finding => ({
  ...{ key: `${code}:${id}`, code, severity, about: [id], place: undefined, numbers: {} },
});
const withFindings = (...findings: readonly Finding[]) => ({ ...report, findings });
const edges = layout.pieces.map(({ id }) => finding('piece-off-deck', 'stop', id));
const lane = finding('lane-crossed', 'warn', layout.mics[0]?.id ?? '');

describe('what is open besides the mics', () => {
  test('is named by its title where it is asked about, as grave as it is', () => {
    const open = withFindings(...edges.slice(0, 1), lane);
    const name = layout.pieces[0]?.name;
    expect(sceneWarnings('stands', open, layout)).toEqual([
      { verdict: 'struck', text: `${name} is over the deck's edge` },
    ]);
    expect(sceneWarnings('lane', open, layout)).toMatchObject([
      { verdict: 'tight', text: expect.stringMatching(/ crosses the way to the stairs$/) },
    ]);
    expect(sceneWarnings('lane', report, layout)).toEqual([]);
  });

  test('many are counted, none is left out', () => {
    expect(edges.length).toBeGreaterThan(7);
    expect(sceneWarnings('stands', withFindings(...edges.slice(0, 6)), layout)).toHaveLength(6);
    const told = sceneWarnings('stands', withFindings(...edges.slice(0, 7)), layout);
    expect(told).toHaveLength(6);
    expect(told.at(-1)).toEqual({
      ...{ verdict: 'struck', text: '2 findings more like these: see the findings' },
    });
  });

  test('stands among the warnings before anyone agrees, whoever is asked about', () => {
    const told = signWarnings([], withFindings(...edges.slice(0, 1), lane), layout);
    expect(told.map(({ verdict }) => verdict)).toEqual(['struck', 'tight']);
  });
});
