import { boxSchema } from '../../layout/cabling.ts';
import { moveBox, setBox } from '../../layout/edit/stage.ts';
import { azimuthField } from '../../layout/fields.ts';
import { BoxSpotFinder } from '../cables/BoxSpotFinder.tsx';
import { CABLE_LENGTH, COUNT, DIRECTION } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SpotFields } from '../inspector/SpotFields.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** The drum sub-box: where it stands, how many inputs it has, how long its multicore is. */
export function BoxFields() {
  const { box } = useOpen().layout;
  return (
    <>
      <Group
        title="Box"
        hint="Place from the middle of the deck; beside the deck it stands on the floor."
      >
        <SpotFields
          of="the box"
          spot={box}
          labels={{ x: 'Right of the middle', y: 'In front of the middle' }}
          apply={(layout, to) => moveBox(layout, to)}
        />
        <NumberField
          label="Inputs face"
          step="Turn the box"
          value={box.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => moveBox(layout, { x: layout.box.x, y: layout.box.y, turn })}
        />
        <NumberField
          label="Inputs"
          step="Inputs of the box"
          value={box.inputs}
          measure={COUNT}
          limits={limitsOf(boxSchema.shape.inputs)}
          apply={(layout, inputs) => setBox(layout, { inputs })}
        />
        <NumberField
          label="Multicore length"
          step="Length of the multicore"
          value={box.tail}
          measure={CABLE_LENGTH}
          limits={limitsOf(boxSchema.shape.tail)}
          apply={(layout, tail) => setBox(layout, { tail })}
        />
      </Group>
      <BoxSpotFinder />
    </>
  );
}
