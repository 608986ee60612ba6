import { setBody } from '../../layout/edit/stage.ts';
import { type BodyOverrides, bodyOverrides } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { OptionalLength } from '../fields/OptionalLength.tsx';
import { limitsOf } from '../fields/reading.ts';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

const lengths: readonly { readonly key: keyof BodyOverrides; readonly label: string }[] = [
  { key: 'acromialHeightSitting', label: 'Seat to top of shoulder' },
  { key: 'biacromialBreadth', label: 'Across the shoulders' },
  { key: 'acromionRadiale', label: 'Upper arm' },
  { key: 'radialeStylion', label: 'Forearm to wrist' },
  { key: 'stylionToGripCentre', label: 'Wrist to grip' },
  { key: 'buttockKneeLength', label: 'Seat back to knee' },
  { key: 'kneeHeightSitting', label: 'Knee height, sitting' },
];

/** Body lengths measured on this player; what is left empty follows from stature. */
export function BodyFields() {
  const { layout, report } = useOpen();
  const { body } = layout.player;
  const { bodyFromStature } = report.player;
  return (
    <Group
      title="Measured body lengths"
      hint="Optional. An empty field follows from stature, by a survey of 6,068 people; one person differs from it by 7 to 23 mm."
      folded
    >
      {lengths.map(({ key, label }) => (
        <OptionalLength
          key={key}
          label={label}
          otherwise={bodyFromStature[key]}
          from="stature"
          value={body[key]}
          limits={limitsOf(bodyOverrides.shape[key].unwrap())}
          onSet={(value) => edit(label, (layout) => setBody(layout, { [key]: value }))}
        />
      ))}
    </Group>
  );
}
