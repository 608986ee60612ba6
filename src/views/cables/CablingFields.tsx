import { cablingSchema } from '../../layout/cabling.ts';
import { setCabling } from '../../layout/edit/stage.ts';
import { GATHERED, LENGTH, PERCENT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** How runs are laid: loops, dressing, and the distance kept. */
export function CablingFields() {
  const { cabling } = useOpen().layout;
  const length = (key: 'loopAtMic' | 'loopAtBox' | 'keepAway', label: string) => (
    <NumberField
      label={label}
      step={label}
      value={cabling[key]}
      measure={LENGTH}
      limits={limitsOf(cablingSchema.shape[key])}
      apply={(layout, value) => setCabling(layout, { [key]: value })}
    />
  );
  return (
    <Group
      title="How runs are laid"
      hint="Gathered: from 0 %, where every cable takes its own shortest way, to 100 %, with as few lines on the floor as can be. At most 1.3 times the shortest way."
    >
      {length('loopAtMic', 'Loop at the mic')}
      {length('loopAtBox', 'Loop at the box')}
      <NumberField
        label="Dressing allowance"
        step="Dressing allowance"
        value={cabling.dressing}
        measure={PERCENT}
        limits={limitsOf(cablingSchema.shape.dressing)}
        apply={(layout, dressing) => setCabling(layout, { dressing })}
      />
      {length('keepAway', 'Kept off what stands')}
      <NumberField
        label="Gathered"
        step="How far cables gather"
        value={cabling.neatness}
        measure={GATHERED}
        limits={limitsOf(cablingSchema.shape.neatness)}
        apply={(layout, neatness) => setCabling(layout, { neatness })}
      />
    </Group>
  );
}
