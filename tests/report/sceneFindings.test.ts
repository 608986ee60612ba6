import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moveBox, setDeck } from '../../src/layout/edit/stage.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import type { FindingCode } from '../../src/report/report.ts';
import { sceneFindings } from '../../src/report/sceneFindings.ts';
import { startingKit } from '../sheet/samples.ts';
import { randomKit } from '../support/randomKit.ts';

/** Told with its mic, or not the drummer's to judge: what is plugged, and what is carried. */
const ELSEWHERE: ReadonlySet<FindingCode> = new Set([
  'mic-struck',
  'mic-in-shell',
  'mic-in-player',
  'mic-in-pedal',
  'mic-against-mic',
  'boom-through-piece',
  'mic-against-stand',
  'stock-missing',
  'input-twice',
  'input-beyond-box',
  'more-mics-than-inputs',
  'phantom-missing',
  'ribbon-with-phantom',
  'channel-twice',
  'split-of-split',
  'split-of-nothing',
  'split-phantom-none',
]);

describe('what the drummer must know of besides the mics', () => {
  test('is everything that must be solved and is told nowhere else, whatever the kit', () => {
    fc.assert(
      fc.property(randomKit, (kit) => {
        const report = createAnalyst()(kit);
        const told = new Set(Object.values(sceneFindings(report)).flat());
        for (const finding of report.findings) {
          if (finding.severity === 'stop' && !ELSEWHERE.has(finding.code)) {
            expect(told).toContain(finding);
          }
        }
      }),
      { numRuns: 12, seed: 7 },
    );
  });

  test('a kit over the edge is about the stands, a cable on the way out about the way', () => {
    const kit = startingKit('demo');
    const small = createAnalyst()(setDeck(kit, { width: 1500, depth: 1500 }));
    expect(sceneFindings(small).stands.map(({ code }) => code)).toContain('piece-off-deck');
    const throne = kit.pieces.find((piece) => piece.kind === 'throne')?.id;
    const back = createAnalyst()(setDeck(kit, { width: 1500, depth: 400 }));
    expect(back.findings.some(({ about: [first] }) => first === throne)).toBe(true);
    expect(sceneFindings(back).stands[0]?.about).toEqual([throne]);
    const [stairs] = kit.deck.stairs;
    expect(stairs?.edge).toBe('back');
    const across = createAnalyst()(moveBox(kit, { x: 300, y: 250 }));
    const other = createAnalyst()(moveBox(kit, { x: kit.deck.width - 300, y: 250 }));
    const codes = [across, other].flatMap((report) =>
      sceneFindings(report).lane.map(({ code }) => code),
    );
    expect(codes).toContain('lane-crossed');
  });
});
