import { useCallback, useRef, useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { HistoryActions, HistoryRow } from '../../session/library.ts';
import { changeHint } from '../words/changeHint.ts';

export interface Hints {
  /** What changed at a point, by its revision; nothing until it was asked for. */
  readonly known: ReadonlyMap<number, string>;
  /** Asks for the hint of a point: what is not as it was at the point before it. */
  want(row: HistoryRow, before: HistoryRow): void;
}

/** Hints of what changed at each point, made only for those that are asked for, each once and in turn. */
export function useHints(history: HistoryActions): Hints {
  const [known, setKnown] = useState<ReadonlyMap<number, string>>(new Map());
  const asked = useRef(new Set<number>());
  const layouts = useRef(new Map<number, Promise<Layout>>());
  const last = useRef<Promise<void>>(Promise.resolve());
  const want = useCallback(
    (row: HistoryRow, before: HistoryRow) => {
      if (asked.current.has(row.revision)) return;
      asked.current.add(row.revision);
      const read = (revision: number): Promise<Layout> => {
        const found = layouts.current.get(revision) ?? history.read(revision);
        layouts.current.set(revision, found);
        return found;
      };
      const make = async () => {
        const hint = changeHint(await read(before.revision), await read(row.revision));
        setKnown((hints) => new Map(hints).set(row.revision, hint));
      };
      // A point that can't be read has no hint; looking at it says why.
      last.current = last.current.then(make).catch(() => undefined);
    },
    [history],
  );
  return { known, want };
}
