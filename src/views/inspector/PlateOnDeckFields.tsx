import { aimMic, moveMicTip } from '../../layout/edit/mics.ts';
import { azimuthField } from '../../layout/fields.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Mount } from '../../layout/mics/mount.ts';
import { clockNote, DIRECTION } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { DIRECTION_HINT, Group } from '../parts/Group.tsx';
import { SpotFields } from './SpotFields.tsx';
import { useMicName } from './useMicName.ts';

interface PlateOnDeckFieldsProps {
  readonly mic: Mic;
  readonly plate: Extract<Mount, { kind: 'plateOnDeck' }>;
}

/** Where a plate lies on the deck. */
export function PlateOnDeckFields({ mic, plate }: PlateOnDeckFieldsProps) {
  const { id } = mic;
  const name = useMicName(mic);
  return (
    <Group title="On the deck" hint={DIRECTION_HINT}>
      <SpotFields of={name} spot={plate} apply={(layout, to) => moveMicTip(layout, id, to)} />
      <NumberField
        label="Faces"
        note={clockNote(plate.turn)}
        step={`Turn ${name}`}
        value={plate.turn}
        measure={DIRECTION}
        limits={limitsOf(azimuthField)}
        round
        apply={(layout, azimuth) => aimMic(layout, id, { azimuth })}
      />
    </Group>
  );
}
