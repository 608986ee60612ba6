import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { ClearanceRow, Finding } from '../../../src/report/report.ts';

/** The five-piece starting kit, as the words' tests read it. */
export const sample: Layout = fivePieceTwoRacks('sample');

/** A clearance of the kit's snare mic with the right stick on its way from snare to ride. */
export const snareRow = (clearance: number, verdict: ClearanceRow['verdict']): ClearanceRow => ({
  mic: 'mic-snare',
  verdict,
  clearance,
  nearest: {
    movement: { kind: 'travel', hand: 'right', from: 'snare', to: 'ride', at: 0.4 },
    part: 'stick',
    micPart: 'boom',
    onMic: { x: -141, y: 564, z: 700 },
    onMoving: { x: -141, y: 564, z: 712 },
  },
});

/** The finding that a mic stands in the snare. */
export const inDrum = (mic: string): Finding => ({
  key: `mic-in-shell:${mic}:snare`,
  code: 'mic-in-shell',
  severity: 'stop',
  about: [mic, 'snare'],
  place: undefined,
  numbers: {},
});

/** The finding that a mic is so near to the player's head, mm. */
export const nearPlayer = (mic: string, gap: number): Finding => ({
  key: `mic-near-player:${mic}`,
  code: 'mic-near-player',
  severity: 'warn',
  about: [mic],
  place: undefined,
  numbers: { gap, head: gap },
});

/** The finding that a mic's stand does not reach so far. */
export const beyondStand = (mic: string): Finding => ({
  key: `mic-beyond-stand:${mic}`,
  code: 'mic-beyond-stand',
  severity: 'stop',
  about: [mic],
  place: undefined,
  numbers: {},
});
