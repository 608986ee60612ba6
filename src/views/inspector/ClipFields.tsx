import { changeClip } from '../../layout/edit/mics.ts';
import { azimuthField } from '../../layout/fields.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { type ClipMount, clipMount } from '../../layout/mics/mount.ts';
import { isDrum } from '../../layout/pieces/piece.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { clockNote, DIRECTION, FINE_LENGTH, TILT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { DIRECTION_HINT, Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { useMicName } from './useMicName.ts';

interface ClipFieldsProps {
  readonly mic: Mic;
  readonly clip: ClipMount;
}

/** Where a clip sits on its rim and how its mic looks over the head. */
export function ClipFields({ mic, clip }: ClipFieldsProps) {
  const { id } = mic;
  const name = useMicName(mic);
  const length = (key: 'reach' | 'height', label: string) => (
    <NumberField
      label={label}
      step={`Move ${name}`}
      value={clip[key]}
      measure={FINE_LENGTH}
      limits={limitsOf(clipMount.shape[key])}
      apply={(layout, value) => changeClip(layout, id, { [key]: value })}
    />
  );
  return (
    <Group title="On the rim" hint={DIRECTION_HINT}>
      <NumberField
        label="Round the rim"
        note={clockNote(clip.angle)}
        step={`Move ${name}`}
        value={clip.angle}
        measure={DIRECTION}
        limits={limitsOf(azimuthField)}
        round
        apply={(layout, angle) => changeClip(layout, id, { angle })}
      />
      <NumberField
        label="Points down by"
        step={`Aim ${name}`}
        value={clip.pitch}
        measure={TILT}
        limits={limitsOf(clipMount.shape.pitch)}
        apply={(layout, pitch) => changeClip(layout, id, { pitch })}
      />
      {length('height', 'Above the head')}
      {length('reach', 'Inside the rim')}
      <ClipItself mic={mic} clip={clip} />
    </Group>
  );
}

function ClipItself({ mic, clip }: ClipFieldsProps) {
  const { layout } = useOpen();
  const { id } = mic;
  const name = useMicName(mic);
  return (
    <>
      <SelectField
        label="On the drum"
        value={clip.drum}
        options={layout.pieces.filter(isDrum).map((drum) => ({ value: drum.id, text: drum.name }))}
        onChoose={(drum) => edit(`Move ${name}`, (from) => changeClip(from, id, { drum }))}
      />
      <Choice
        label="Clip"
        value={clip.material}
        options={[
          { value: 'rubber', text: 'Rubber' },
          { value: 'metal', text: 'Metal' },
        ]}
        onChoose={(material) =>
          edit(`Clip of ${name}`, (from) => changeClip(from, id, { material }))
        }
      />
      {clip.material === 'metal' && (
        <p className="whole field-hint">
          A metal clip may mark the rim: ask the drum's owner first.
        </p>
      )}
    </>
  );
}
