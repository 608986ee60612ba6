import { useState } from 'react';
import type { PatchReport } from '../../report/patch.ts';
import { PATCH_TABLES, type PatchTable, patchCsv } from '../../report/patchCsv.ts';
import { FieldProblem } from '../fields/FieldProblem.tsx';
import { useActions } from '../parts/useActions.ts';
import { useOpen } from '../parts/useOpen.ts';
import { usePrinted } from '../parts/usePrinted.ts';
import { PrintSheet } from './PrintSheet.tsx';
import { TABLE_NAMES } from './tableNames.ts';

/** The tables as files and on paper. */
export function PatchOut({ patch }: { readonly patch: PatchReport }) {
  const { layout } = useOpen();
  const actions = useActions();
  const [printed, print] = usePrinted<PatchTable>();
  const [trouble, setTrouble] = useState('');
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
        {PATCH_TABLES.map((table) => (
          <button key={table} type="button" onClick={() => print(table)}>
            Print the {TABLE_NAMES[table].toLowerCase()}
          </button>
        ))}
      </div>
      <FieldProblem text={trouble === '' ? '' : `The file can't be handed out: ${trouble}`} />
      {printed !== null && <PrintSheet table={printed} patch={patch} />}
    </section>
  );
}
