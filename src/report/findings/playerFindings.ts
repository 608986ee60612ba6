import type { AgainstPlayer } from '../../clearance/againstPlayer.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Finding } from '../report.ts';

/**
 * Mics in or too near to the player at rest, as findings. `numbers.depth` says how deep, or `numbers.gap` how near, and the same number stands under
 * the name of the part: `head`, `neck`, `shoulders`, `trunk`, `foot`, `beater` or `axle`.
 */
export const playerFindings = (found: readonly AgainstPlayer[], margin: Mm): readonly Finding[] =>
  found.map(({ code, about, part, place, overlap }) => {
    const shared = { key: `${code}:${about.join(':')}`, code, about, place };
    if (code !== 'mic-near-player') {
      return { ...shared, severity: 'stop', numbers: { depth: overlap, [part]: overlap } };
    }
    const gap = Math.max(0, margin - overlap);
    return { ...shared, severity: 'warn', numbers: { gap, [part]: gap } };
  });
