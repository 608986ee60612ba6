import { describe, expect, test } from 'vitest';
import { lineCheck } from '../../../src/patch/lineCheck/lineCheck.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { patchReport } from '../../../src/report/patch.ts';
import { checkWords } from '../../../src/views/patch/checkWords.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('demo');
const { rows } = patchReport(layout, createAnalyst()(layout));

describe('what the line check says of the desk', () => {
  test('is what the plan says, and to be checked there', () => {
    const [step] = lineCheck(rows, []);
    if (!step) throw new Error('expected a line');
    const chosen = <T>(value: T) => ({ value, start: value, byHand: false });
    const row = {
      ...step.row,
      polarity: chosen('reversed' as const),
      pad: chosen(20),
      highPass: chosen(80),
    };
    const plain = { ...row, polarity: chosen('normal' as const), pad: chosen(0) };
    expect(checkWords({ ...step, phantom: 'leave-on', row })).toEqual([
      '48 V: on in this plan. Check it at the desk.',
      'In this plan: polarity reversed, pad 20 dB, high-pass 80 Hz. Check them at the desk.',
    ]);
    expect(
      checkWords({ ...step, phantom: 'leave-off', row: { ...plain, highPass: chosen(null) } }),
    ).toEqual([
      '48 V: off in this plan. Check it at the desk.',
      'In this plan: polarity normal, no pad, no high-pass. Check them at the desk.',
    ]);
    for (const phantom of ['switch-on', 'switch-off'] as const) {
      expect(checkWords({ ...step, phantom, row })[0]).toMatch(/in this plan, but .*Mute, then/);
    }
  });
});
