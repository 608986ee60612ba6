import { changePiece } from '../../layout/edit/change.ts';
import { movePiece } from '../../layout/edit/pieces.ts';
import { azimuthField } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { type Pedal, pedalSchema } from '../../layout/pieces/pedal.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { DIRECTION, LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { DIRECTION_HINT, Group } from '../parts/Group.tsx';
import { SpotFields } from './SpotFields.tsx';
import { turnTo } from './turnTo.ts';

const changePedal = (layout: Layout, id: string, patch: Partial<Pedal>): Layout =>
  changePiece(layout, id, (piece) => (piece.kind === 'pedal' ? { ...piece, ...patch } : piece));

/** Place, foot and size of a pedal. */
export function PedalFields({ pedal }: { readonly pedal: Pedal }) {
  const { id, name } = pedal;
  return (
    <>
      <Group title="Place of the heel" hint={DIRECTION_HINT}>
        <SpotFields of={name} spot={pedal} apply={(layout, to) => movePiece(layout, id, to)} />
        <NumberField
          label="Points toward"
          step={`Turn ${name}`}
          value={pedal.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => turnTo(layout, id, turn)}
        />
      </Group>
      <Group title="Foot">
        <Choice
          label="Foot"
          value={pedal.foot}
          options={[
            { value: 'left', text: 'Left' },
            { value: 'right', text: 'Right' },
          ]}
          onChoose={(foot) =>
            edit(`Foot on ${name}`, (layout) => changePedal(layout, id, { foot }))
          }
        />
        <Choice
          label="Plays"
          value={pedal.plays}
          options={[
            { value: 'kick', text: 'Kick' },
            { value: 'hiHat', text: 'Hi-hat' },
          ]}
          onChoose={(plays) =>
            edit(`What ${name} plays`, (layout) => changePedal(layout, id, { plays }))
          }
        />
      </Group>
      <Group title="Size">
        <NumberField
          label="Length"
          step={`Size of ${name}`}
          value={pedal.length}
          measure={LENGTH}
          limits={limitsOf(pedalSchema.shape.length)}
          apply={(layout, length) => changePedal(layout, id, { length })}
        />
        <NumberField
          label="Width"
          step={`Size of ${name}`}
          value={pedal.width}
          measure={LENGTH}
          limits={limitsOf(pedalSchema.shape.width)}
          apply={(layout, width) => changePedal(layout, id, { width })}
        />
      </Group>
    </>
  );
}
