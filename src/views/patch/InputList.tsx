import { useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import { moveChannel, orderByFestival } from '../../patch/channels/editChannels.ts';
import { numberInputs } from '../../report/numberInputs.ts';
import type { PatchReport } from '../../report/patch.ts';
import { edit } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { StyleField } from '../sound/StyleField.tsx';
import { InputLine } from './InputLine.tsx';
import { editPatch, useFestivalMics } from './usePatch.ts';
import { useReorder } from './useReorder.ts';

/** The input list: one line for each channel, in an order that can be changed by hand. */
export function InputList({ patch }: { readonly patch: PatchReport }) {
  const { layout } = useOpen();
  const panel = usePanel();
  const mics = useFestivalMics();
  const [shown, setShown] = useState<Id | null>(null);
  const { rows } = patch;
  const move = (id: Id, to: number) =>
    editPatch('Move a channel', (from) => moveChannel(from, mics, id, to));
  const reorder = useReorder(move);
  const { order } = layout.patch;
  return (
    <>
      <StyleField />
      <p className="field-hint">
        It sets where high-pass, pad and insert start, by common practice. Then listen.
      </p>
      <ol className="lines" ref={reorder.list} aria-label="Input list">
        {rows.map((row, index) => (
          <InputLine
            key={row.id}
            row={row}
            place={index}
            last={rows.length - 1}
            dropAt={reorder.dropAt(index)}
            shown={shown === row.id}
            handle={reorder.handle(row.id)}
            onMove={(to) => move(row.id, to)}
            onToggle={() => {
              const next = shown === row.id ? null : row.id;
              setShown(next);
              panel.point(null, next === null ? null : { kind: 'mic', id: row.mic });
            }}
          />
        ))}
      </ol>
      <div className="section-actions">
        <button
          type="button"
          disabled={order === null}
          onClick={() => editPatch('Festival order', orderByFestival)}
        >
          Festival order
        </button>
        <p className="field-hint">
          {order === null
            ? 'In festival order: kick, snare, hi-hat, toms, cymbals, overheads.'
            : 'In the order set by hand.'}
        </p>
        <button
          type="button"
          disabled={rows.length === 0}
          onClick={() => edit('Plug the box in this order', numberInputs)}
        >
          Plug the box in this order
        </button>
      </div>
    </>
  );
}
