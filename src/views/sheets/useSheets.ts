import { useMemo } from 'react';
import { useSession } from '../../session/session.ts';
import { makeSheet, type Sheet } from '../../sheet/makeSheets.ts';
import type { Paper } from '../../sheet/paper/paper.ts';
import type { SheetName } from '../../sheet/words.ts';
import { useOpen } from '../parts/useOpen.ts';
import { sheetWords } from '../words/sheetWords.ts';
import { PAPER_NAMES } from './usePaper.ts';

/** Makes sheets of the open layout, each when it is asked for. */
export function useSheets(paper: Paper): (name: SheetName) => Sheet {
  const { layout, report } = useOpen();
  const seenFrom = useSession(({ preferences }) => preferences.seenFrom);
  return useMemo(() => {
    const words = sheetWords(layout, report, PAPER_NAMES[paper.size]);
    const made = new Map<SheetName, Sheet>();
    return (name) => {
      const sheet =
        made.get(name) ?? makeSheet(name, { layout, report, words }, { paper, seenFrom });
      made.set(name, sheet);
      return sheet;
    };
  }, [layout, report, paper, seenFrom]);
}
