import { useCallback, useEffect, useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { HistoryRow } from '../../session/library.ts';
import { beginOffer, edit, leaveOffer, select } from '../../session/session.ts';
import { useActions } from '../parts/useActions.ts';
import { type Task, useTask } from '../parts/useTask.ts';
import { pointWords } from '../words/historyWords.ts';
import { type Hints, useHints } from './useHints.ts';

/** A revision that is looked at. */
export interface Looked {
  readonly row: HistoryRow;
  readonly layout: Layout;
}

export interface HistoryView {
  readonly task: Task;
  /** Null while they are looked for. */
  readonly rows: readonly HistoryRow[] | null;
  readonly looked: Looked | null;
  /** Another revision that it is compared with; null: with what is open. */
  readonly against: Looked | null;
  /** What was just done, to be read. */
  readonly done: string;
  readonly hints: Hints;
  look(row: HistoryRow): void;
  compareWith(row: HistoryRow | null): void;
  bringBack(): void;
  name(row: HistoryRow, name: string): void;
  settle(row: HistoryRow): void;
}

/** The history of the open layout. What is looked at stands on the plan as an offer: nothing is changed until it is taken. */
export function useHistory(): HistoryView {
  const { history } = useActions();
  const task = useTask();
  const { run } = task;
  const [rows, setRows] = useState<readonly HistoryRow[] | null>(null);
  const [looked, setLooked] = useState<Looked | null>(null);
  const [against, setAgainst] = useState<Looked | null>(null);
  const [done, setDone] = useState('');
  const refresh = useCallback(
    () => run('Reading the history', async () => setRows(await history.list())),
    [history, run],
  );
  useEffect(() => {
    refresh();
    return leaveOffer;
  }, [refresh]);
  const leave = (): void => {
    leaveOffer();
    setLooked(null);
    setAgainst(null);
  };
  const doing = (what: string, work: () => Promise<void>, said: string): void =>
    run(what, async () => {
      await work();
      setRows(await history.list());
      setDone(said);
    });
  return {
    task,
    rows,
    looked,
    against,
    done,
    hints: useHints(history),
    look: (row) => {
      setDone('');
      if (row.tip === 'holds') return leave();
      run('Looking at it', async () => {
        const layout = await history.read(row.revision);
        select(null);
        beginOffer(`Bring back ${pointWords(row)}`, () => layout);
        setLooked({ row, layout });
      });
    },
    compareWith: (row) => {
      if (row === null || row.tip === 'holds') return setAgainst(null);
      run('Comparing', async () => setAgainst({ row, layout: await history.read(row.revision) }));
    },
    bringBack: () => {
      if (looked === null) return;
      const { row, layout } = looked;
      leave();
      edit(`Bring back ${pointWords(row)}`, () => layout);
      const settled = async () => {
        await history.list();
        if (row.tip === 'aside') await history.settle(row.revision);
      };
      doing('Bringing it back', settled, `${pointWords(row)} is open again, as a new point.`);
    },
    name: (row, name) =>
      doing(
        'Naming it',
        () => history.name(row.revision, name),
        name === '' ? 'The name is taken away.' : `Named “${name}”. It stays in the history.`,
      ),
    settle: (row) => {
      leave();
      const said = 'That line is settled. Its points stay in the history.';
      doing('Settling it', () => history.settle(row.revision), said);
    },
  };
}
