import { setMargin } from '../../layout/edit/stage.ts';
import { layoutSchema } from '../../layout/layout.ts';
import { MARGIN } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** The clearance that is wanted. */
export function MarginField() {
  const { margin } = useOpen().layout;
  return (
    <Group
      title="Margin"
      hint="A mic with less clearance than this is tight; below 0 it is struck."
    >
      <NumberField
        label="Wanted clearance"
        step="Margin"
        value={margin}
        measure={MARGIN}
        limits={limitsOf(layoutSchema.shape.margin)}
        apply={setMargin}
      />
    </Group>
  );
}
