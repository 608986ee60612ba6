import type { Mic } from '../../layout/mics/mic.ts';
import { LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { insertionOf, insertTo } from './insertion.ts';
import { useMicName } from './useMicName.ts';

/** How deep a kick mic stands behind the front head. */
export function InsertionField({ mic }: { readonly mic: Mic }) {
  const { layout } = useOpen();
  const name = useMicName(mic);
  const insertion = insertionOf(layout, mic);
  if (!insertion) return null;
  return (
    <NumberField
      label="Behind the front head"
      step={`Insertion of ${name}`}
      value={insertion.depth}
      measure={LENGTH}
      limits={{ low: -2000, high: insertion.kick.depth }}
      apply={(from, depth) => insertTo(from, mic.id, depth)}
    />
  );
}
