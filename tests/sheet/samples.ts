import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import type { SeenFrom } from '../../src/rig/standpoint.ts';
import { makeSheets, type Sheet } from '../../src/sheet/makeSheets.ts';
import type { Paper } from '../../src/sheet/paper/paper.ts';
import { sheetWords } from '../../src/views/words/sheetWords.ts';

export const PAPERS: readonly Paper[] = (['a4', 'letter'] as const).flatMap((size) =>
  (['landscape', 'portrait'] as const).map((orientation) => ({ size, orientation })),
);

export const startingKit = (key: string): Layout => {
  const kit = STARTING_KITS.find((each) => each.key === key);
  if (!kit) throw new Error(`no starting kit ${key}`);
  return kit.make('sample');
};

export function sheetsOf(
  layout: Layout,
  paper: Paper,
  seenFrom: SeenFrom = 'house',
): readonly Sheet[] {
  const report = createAnalyst()(layout);
  const words = sheetWords(layout, report, paper.size === 'a4' ? 'A4' : 'Letter');
  return makeSheets({ layout, report, words }, { paper, seenFrom });
}
