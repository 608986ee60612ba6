import { expect, it } from 'vitest';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { turnAway } from '../../src/report/turnAway.ts';
import { seededKits } from '../support/randomKit.ts';

const analyse = createAnalyst();
/** No turn is told into one of these. */
const IN_PIECE = new Set(['mic-in-shell', 'boom-through-piece', 'mic-against-stand']);

const turned = (layout: Layout, id: string, by: number): Layout => ({
  ...layout,
  mics: layout.mics.map((mic) =>
    mic.id === id && mic.mount.kind === 'clip'
      ? { ...mic, mount: { ...mic.mount, angle: (mic.mount.angle + by + 360) % 360 } }
      : mic,
  ),
});

it('A1: the turn that is told gives more room by a whole analysis, and the other way no more, unless the mic stands in something there', () => {
  let told = 0;
  for (const layout of seededKits(40, 3)) {
    const report = analyse(layout);
    for (const row of report.clearances) {
      if (row.verdict === 'clear') continue;
      const turn = turnAway(row, layout, report);
      const mount = layout.mics.find(({ id }) => id === row.mic)?.mount;
      if (mount?.kind !== 'clip') expect(turn).toBeNull();
      if (!turn) continue;
      told += 1;
      const sign = turn.way === 'anticlockwise' ? 1 : -1;
      const after = (by: number) => {
        const next = analyse(turned(layout, row.mic, by));
        const within = next.findings.some(
          ({ code, about }) => IN_PIECE.has(code) && about[0] === row.mic,
        );
        const room = next.clearances.find(({ mic }) => mic === row.mic)?.clearance ?? Number.NaN;
        return { room, within };
      };
      const there = after(sign * turn.by);
      expect(there.within).toBe(false);
      expect(there.room).toBeGreaterThan(row.clearance);
      const other = after(-sign * turn.by);
      if (!other.within) expect(other.room).toBeLessThanOrEqual(there.room + 0.2);
    }
  }
  expect(told).toBeGreaterThan(5);
});
