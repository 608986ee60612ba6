import { describe, expect, it } from 'vitest';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { RunRow } from '../../../src/report/report.ts';
import { runNews } from '../../../src/views/words/runNews.ts';
import { sample } from './sampleLayout.ts';

const { runs } = createAnalyst()(sample);
const changed = (mic: string, patch: Partial<RunRow>): readonly RunRow[] =>
  runs.map((run) => (run.mic === mic ? { ...run, ...patch } : run));
const lost = changed('mic-snare', { through: ['kick'] });

describe('what a change did to cables', () => {
  it('is nothing where they are as they were, only shorter, or longer within their cable', () => {
    expect(runNews(runs, runs, sample)).toBe('');
    const snare = runs.find(({ mic }) => mic === 'mic-snare');
    if (!snare) throw new Error('expected a snare mic');
    const [cable = 0] = snare.carried;
    expect(snare.total).toBeLessThan(cable);
    expect(runNews(runs, changed('mic-snare', { total: cable }), sample)).toBe('');
    expect(runNews(runs, changed('mic-snare', { total: 10 }), sample)).toBe('');
    // Another cable, because another run took its own.
    expect(runNews(runs, changed('mic-snare', { carried: [20_000] }), sample)).toBe('');
  });

  it('says which have lost their way, and which have one again', () => {
    expect(runNews(runs, lost, sample)).toBe('Cables: Snare mic has no free way any more.');
    expect(runNews(lost, runs, sample)).toBe('Cables: Snare mic has a free way again.');
    expect(runNews(lost, lost, sample)).toBe('');
  });

  it('says which outgrow their cable, and what serves them now', () => {
    const five = changed('mic-snare', { total: 4900, carried: [5000] });
    const longer = { total: 5200, carried: [7500], missing: [] };
    expect(runNews(five, changed('mic-snare', longer), sample)).toBe(
      'Cables: Snare mic outgrows 5 m, now 7.5 m cable.',
    );
    const none = { total: 5200, carried: [], missing: [7500] };
    expect(runNews(five, changed('mic-snare', none), sample)).toBe(
      'Cables: Snare mic outgrows 5 m, now missing: bring 7.5 m.',
    );
  });

  it('a drum pulled far away takes its mic’s cable with it', () => {
    const analyse = createAnalyst();
    const far = movePiece(sample, 'floor', { x: 0, y: -3000 });
    const news = runNews(analyse(sample).runs, analyse(far).runs, far);
    expect(news).toBe('Cables: Floor tom mic outgrows 5 m, now 7.5 m cable.');
  });
});
