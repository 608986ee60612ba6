import { expect, test } from 'vitest';
import { fivePieceOneRack } from '../../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { unreachedWords } from '../../../src/views/words/reachWords.ts';

const kit = fivePieceOneRack('kit');
const analyse = createAnalyst();
const said = (layout: typeof kit, mic: string) => {
  const report = analyse(layout);
  const row = report.clearances.find((each) => each.mic === mic);
  if (!row) throw new Error('expected a row');
  return unreachedWords(row, report, layout);
};

test('a move of a piece that its hand does not reach is said to be computed as if it did', () => {
  expect(said(kit, 'mic-rack-tom')).toBe('');
  const small = { ...kit, player: { ...kit.player, stature: 1200, lean: 0 } };
  expect(said(small, 'mic-rack-tom')).toBe(
    "The player's left hand does not reach Rack tom: the move is computed as if it did.",
  );
  // A cymbal swings and a leg rests whoever sits there.
  expect(said(small, 'mic-hi-hat')).toBe('');
  expect(said(small, 'mic-kick-in')).toBe('');
});

test('a hand that reaches it is not blamed for the other', () => {
  const small = { ...kit, player: { ...kit.player, stature: 1200, lean: 0 } };
  const report = analyse(small);
  const row = report.clearances.find(({ mic }) => mic === 'mic-rack-tom');
  if (!row?.nearest) throw new Error('expected a move');
  const by = (hand: 'right' | 'left') => ({
    nearest: row.nearest && {
      ...row.nearest,
      movement: { kind: 'stroke', hand, on: 'floor-1', at: 0 } as const,
    },
  });
  expect(unreachedWords(by('right'), report, small)).toBe('');
  expect(unreachedWords(by('left'), report, small)).toContain('left hand does not reach');
});
