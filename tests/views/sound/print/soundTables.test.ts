import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { type PrintedPart, soundTables } from '../../../../src/views/sound/print/soundTables.ts';
import { kit, sound, soundOf } from '../sampleSound.ts';

const parts: readonly PrintedPart[] = ['close', 'overheads', 'timing', 'pairs', 'highPass'];

describe('the printed tables', () => {
  it.each(STARTING_KITS)('$name: every row fills its head, no cell is empty', (start) => {
    const layout = start.make('kit');
    const figures = soundOf(layout);
    for (const part of parts) {
      for (const { head, rows } of soundTables(part, layout, figures)) {
        expect(new Set(head).size).toBe(head.length);
        for (const row of rows) {
          expect(row).toHaveLength(head.length);
          expect(row).not.toContain('');
          expect(row.join()).not.toMatch(/NaN|undefined|Infinity/);
        }
      }
    }
  });

  it('hold every mic and every pair', () => {
    const rows = (part: PrintedPart, table = 0) =>
      soundTables(part, kit, sound)[table]?.rows.length;
    expect(rows('close')).toBe(sound.close.length);
    expect(rows('timing')).toBe(sound.timing.rows.length);
    expect(rows('timing', 1)).toBe(sound.timing.alignments.length);
    expect(rows('pairs')).toBe(sound.pairs.length);
    expect(rows('highPass')).toBe(sound.highPasses.length);
    expect(rows('overheads', 1)).toBe(sound.overheads?.heights.rows.length);
  });

  it('mark the height that is enough', () => {
    const marked = soundTables('overheads', kit, sound)[1]?.rows.filter(([height]) =>
      height.endsWith(', enough'),
    );
    expect(marked).toHaveLength(1);
  });
});
