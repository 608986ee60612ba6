import { useEffect, useState } from 'react';
import type { PatchReport } from '../../report/patch.ts';
import { PATCH_TABLES, type PatchTable, patchCsv } from '../../report/patchCsv.ts';
import { useActions } from '../parts/useActions.ts';
import { useOpen } from '../parts/useOpen.ts';
import { PrintSheet } from './PrintSheet.tsx';
import { TABLE_NAMES } from './tableNames.ts';

/** The tables as files and on paper. */
export function PatchOut({ patch }: { readonly patch: PatchReport }) {
  const { layout } = useOpen();
  const actions = useActions();
  const [printed, setPrinted] = useState<PatchTable | null>(null);
  const [trouble, setTrouble] = useState('');
  useEffect(() => {
    if (printed === null) return;
    const done = () => setPrinted(null);
    addEventListener('afterprint', done, { once: true });
    print();
    return () => removeEventListener('afterprint', done);
  }, [printed]);
  const download = (table: PatchTable) => {
    setTrouble('');
    actions.exportTable(table, patchCsv(table, layout, patch)).catch((error: unknown) => {
      setTrouble(error instanceof Error ? error.message : String(error));
    });
  };
  return (
    <section className="group">
      <h3>Out of the app</h3>
      <div className="buttons">
        {PATCH_TABLES.map((table) => (
          <button key={table} type="button" onClick={() => download(table)}>
            {TABLE_NAMES[table]} as CSV
          </button>
        ))}
        {(['inputs', 'cables'] as const).map((table) => (
          <button key={table} type="button" onClick={() => setPrinted(table)}>
            Print the {TABLE_NAMES[table].toLowerCase()}
          </button>
        ))}
      </div>
      {trouble !== '' && (
        <p className="field-problem" role="alert">
          The file can't be handed out: {trouble}
        </p>
      )}
      {printed !== null && <PrintSheet table={printed} patch={patch} />}
    </section>
  );
}
