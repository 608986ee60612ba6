import { boxSchema } from '../../layout/cabling.ts';
import { moveBox, setBox } from '../../layout/edit/stage.ts';
import { azimuthField } from '../../layout/fields.ts';
import { edit } from '../../session/session.ts';
import { BoxSpotFinder } from '../cables/BoxSpotFinder.tsx';
import { Choice } from '../fields/Choice.tsx';
import { CABLE_LENGTH, COUNT, DIRECTION } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SpotFields } from '../inspector/SpotFields.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** The four usual directions; one between them is none of these. */
const SIDES = [
  { value: '90', text: 'Audience' },
  { value: '270', text: 'Back' },
  { value: '180', text: 'Left' },
  { value: '0', text: 'Right' },
];

/** The drum sub-box: where it stands, how many inputs it has, how long its multicore is. */
export function BoxFields() {
  const { box } = useOpen().layout;
  return (
    <>
      <Group
        title="Box"
        hint="Place from the middle of the deck; beside the deck it stands on the floor. Left and right are the player’s."
      >
        <SpotFields
          of="the box"
          spot={box}
          labels={{ x: 'Right of the middle', y: 'In front of the middle' }}
          apply={(layout, to) => moveBox(layout, to)}
        />
        <div className="whole">
          <Choice
            label="Inputs face toward"
            value={String(box.turn)}
            options={SIDES}
            onChoose={(turn) =>
              edit('Turn the box', (layout) =>
                moveBox(layout, { x: layout.box.x, y: layout.box.y, turn: Number(turn) }),
              )
            }
          />
        </div>
        <NumberField
          label="Or exactly"
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
