import { setPlayer, setStick } from '../../layout/edit/stage.ts';
import { playerSchema } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { showLength } from '../../units/lengthText.ts';
import { Choice } from '../fields/Choice.tsx';
import { LENGTH, type Measure, THICKNESS } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { unbroken } from '../words/nameOf.ts';
import { STROKES } from '../words/strokeWords.ts';

/** The stick and how far it is raised: from taps to full strokes, or any height. */
export function StrokeFields() {
  const { player, units } = useOpen().layout;
  const { strokeHeight } = player;
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
      <div className="whole">
        <Choice
          label="Strokes up to"
          value={String(strokeHeight)}
          options={STROKES.map(({ name, height }) => ({
            value: String(height),
            text: unbroken(`${name}, ${showLength(height, units)}`),
          }))}
          onChoose={(value) =>
            edit('Stroke height', (layout) => setPlayer(layout, { strokeHeight: Number(value) }))
          }
        />
      </div>
      <NumberField
        label="Stroke height"
        step="Stroke height"
        value={strokeHeight}
        measure={LENGTH}
        limits={limitsOf(playerSchema.shape.strokeHeight)}
        apply={(layout, height) => setPlayer(layout, { strokeHeight: height })}
      />
      {stick('length', 'Stick length', LENGTH)}
      {stick('diameter', 'Stick thickness', THICKNESS)}
      {stick('butt', 'Held from the butt', LENGTH)}
      <p className="whole field-hint">
        The named heights are common teaching, from memory: any height can be set. A mic that is
        clear of taps alone is not clear of a full stroke. And after lower strokes the hands travel
        lower from piece to piece: a mic beside that way can come out nearer.
      </p>
    </Group>
  );
}
