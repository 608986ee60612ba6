import { mirrorKit } from '../../layout/edit/mirror.ts';
import { setPlayer, setStick } from '../../layout/edit/stage.ts';
import { playerSchema } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { LENGTH, type Measure, THICKNESS } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { TextField } from '../fields/TextField.tsx';
import { Group } from '../parts/Group.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { BodyFields } from './BodyFields.tsx';

/** The player, the stick and how far it is raised: what every clearance is computed from. */
export function PlayerFields() {
  return (
    <>
      <PersonFields />
      <StrokeFields />
      <BodyFields />
    </>
  );
}

function PersonFields() {
  const { player } = useOpen().layout;
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
      <NumberField
        label="Stature, standing"
        step="Stature"
        value={player.stature}
        measure={LENGTH}
        limits={limitsOf(playerSchema.shape.stature)}
        apply={(layout, stature) => setPlayer(layout, { stature })}
      />
      <NumberField
        label="Seat height"
        step="Seat height"
        value={player.seatHeight}
        measure={LENGTH}
        limits={limitsOf(playerSchema.shape.seatHeight)}
        apply={(layout, seatHeight) => setPlayer(layout, { seatHeight })}
      />
      <Choice
        label="Lead hand"
        value={player.leadHand}
        options={[
          { value: 'left', text: 'Left' },
          { value: 'right', text: 'Right' },
        ]}
        onChoose={(leadHand) => edit('Lead hand', (layout) => setPlayer(layout, { leadHand }))}
      />
      <div className="wide">
        <button type="button" onClick={() => edit('Mirror the kit', mirrorKit)}>
          <Icon name="mirror" /> Mirror the whole kit
        </button>
        <p className="field-hint">Swaps left and right for a left-handed player, mics included.</p>
      </div>
    </Group>
  );
}

function StrokeFields() {
  const { player } = useOpen().layout;
  const shape = playerSchema.shape.stick.shape;
  const stick = (key: 'length' | 'diameter' | 'butt', label: string, measure: Measure) => (
    <NumberField
      label={label}
      step="Stick"
      value={player.stick[key]}
      measure={measure}
      limits={limitsOf(shape[key])}
      apply={(layout, value) => setStick(layout, { [key]: value })}
    />
  );
  return (
    <Group title="Stick and stroke">
      {stick('length', 'Stick length', LENGTH)}
      {stick('diameter', 'Stick thickness', THICKNESS)}
      {stick('butt', 'Held from the butt', LENGTH)}
      <NumberField
        label="Height of a full stroke"
        step="Stroke height"
        value={player.strokeHeight}
        measure={LENGTH}
        limits={limitsOf(playerSchema.shape.strokeHeight)}
        apply={(layout, strokeHeight) => setPlayer(layout, { strokeHeight })}
      />
    </Group>
  );
}
