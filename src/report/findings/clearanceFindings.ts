import type { MicClearance } from '../../clearance/nearest.ts';
import type { Finding } from '../report.ts';

/** One finding for every mic that is struck or tight. */
export const clearanceFindings = (clearances: readonly MicClearance[]): readonly Finding[] =>
  clearances.flatMap(({ mic, verdict, clearance, nearest }): Finding[] =>
    verdict === 'clear' || !nearest
      ? []
      : [
          {
            key: `mic-${verdict}:${mic}`,
            code: verdict === 'struck' ? 'mic-struck' : 'mic-tight',
            severity: verdict === 'struck' ? 'stop' : 'warn',
            about: [mic],
            place: nearest.onMic,
            numbers: { clearance },
          },
        ],
  );
