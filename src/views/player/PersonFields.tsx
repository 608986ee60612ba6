import { setPlayer } from '../../layout/edit/stage.ts';
import { playerSchema } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { TextField } from '../fields/TextField.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** Who plays, how tall, how they sit and how far they lean. */
export function PersonFields() {
  const { player } = useOpen().layout;
  const length = (key: 'stature' | 'seatHeight' | 'lean', label: string, step: string) => (
    <NumberField
      label={label}
      step={step}
      value={player[key]}
      measure={LENGTH}
      limits={limitsOf(playerSchema.shape[key])}
      apply={(layout, value) => setPlayer(layout, { [key]: value })}
    />
  );
  return (
    <Group title="Person">
      <div className="wide">
        <TextField
          label="Name"
          value={player.name}
          most={80}
          onSet={(name) => edit('Player name', (layout) => setPlayer(layout, { name }))}
        />
      </div>
      {length('stature', 'Stature, standing', 'Stature')}
      {length('seatHeight', 'Seat height', 'Seat height')}
      {length('lean', 'Trunk leans at most', 'Trunk lean')}
      <p className="whole field-hint">
        The trunk leans only toward what the arm alone does not reach. 0: it stays upright.
      </p>
    </Group>
  );
}
