import { changePiece } from '../../layout/edit/change.ts';
import { movePiece, turnFeet } from '../../layout/edit/pieces.ts';
import { setPlayer } from '../../layout/edit/stage.ts';
import { azimuthField } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { type Throne, throneSchema } from '../../layout/pieces/throne.ts';
import { playerSchema } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { DIRECTION, LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { SpotFields } from './SpotFields.tsx';

const changeThrone = (layout: Layout, id: string, patch: Partial<Throne>): Layout =>
  changePiece(layout, id, (piece) => (piece.kind === 'throne' ? { ...piece, ...patch } : piece));

const LEGS = { 3: '3', 4: '4', 5: '5' } as const;

/** The seat: height, feet, and moving it under a kit that stays. */
export function ThroneFields({ throne }: { readonly throne: Throne }) {
  const { id, name } = throne;
  const { player } = useOpen().layout;
  return (
    <>
      <Group
        title="Place"
        hint="Every place of the kit counts from the throne. Moved here, the kit stays where it stands."
      >
        <SpotFields
          of={name}
          spot={{ x: 0, y: 0 }}
          labels={{ x: 'Move to the right by', y: 'Move forward by' }}
          apply={(layout, to) => movePiece(layout, id, to)}
        />
        <NumberField
          label="Seat height"
          step="Seat height"
          value={player.seatHeight}
          measure={LENGTH}
          limits={limitsOf(playerSchema.shape.seatHeight)}
          apply={(layout, seatHeight) => setPlayer(layout, { seatHeight })}
        />
        <NumberField
          label="Seat diameter"
          step={`Size of ${name}`}
          value={throne.diameter}
          measure={LENGTH}
          limits={limitsOf(throneSchema.shape.diameter)}
          apply={(layout, diameter) => changeThrone(layout, id, { diameter })}
        />
      </Group>
      <Group title="Feet">
        <Choice
          label="Legs"
          value={LEGS[throne.legs]}
          options={throneSchema.shape.legs.options.map((option) => {
            const value = LEGS[option.value];
            return { value, text: value };
          })}
          onChoose={(value) => {
            const legs = value === '3' ? 3 : value === '4' ? 4 : 5;
            edit(`Feet of ${name}`, (layout) => changeThrone(layout, id, { legs }));
          }}
        />
        <NumberField
          label="Feet reach out"
          step={`Feet of ${name}`}
          value={throne.spread}
          measure={LENGTH}
          limits={limitsOf(throneSchema.shape.spread)}
          apply={(layout, spread) => changeThrone(layout, id, { spread })}
        />
        <NumberField
          label="First foot toward"
          step={`Feet of ${name}`}
          value={throne.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => turnFeet(layout, id, turn)}
        />
      </Group>
    </>
  );
}
