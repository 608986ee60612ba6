import { setPlateDepth } from '../../layout/edit/mics.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { type Mount, plateInKick } from '../../layout/mics/mount.ts';
import { LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { Group } from '../parts/Group.tsx';
import { useMicName } from './useMicName.ts';

interface PlateInKickFieldsProps {
  readonly mic: Mic;
  readonly plate: Extract<Mount, { kind: 'plateInKick' }>;
}

/** How deep a plate lies in its kick. */
export function PlateInKickFields({ mic, plate }: PlateInKickFieldsProps) {
  const name = useMicName(mic);
  return (
    <Group title="In the kick">
      <NumberField
        label="Behind the front head"
        step={`Move ${name}`}
        value={plate.depth}
        measure={LENGTH}
        limits={limitsOf(plateInKick.shape.depth)}
        apply={(layout, depth) => setPlateDepth(layout, mic.id, depth)}
      />
    </Group>
  );
}
