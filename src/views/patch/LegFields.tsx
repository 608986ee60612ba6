import { changePatch } from '../../layout/edit/patch.ts';
import { type Leg, otherLeg, type Split } from '../../layout/patch.ts';
import { removeLeg, replaceLeg } from '../../patch/splits/editSplits.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { OHMS } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { editPatch } from './usePatch.ts';

const CONNECTIONS = [
  { value: 'direct', text: 'Direct' },
  { value: 'isolated', text: 'Isolated' },
] as const;

interface LegFieldsProps {
  readonly split: Split;
  readonly leg: Leg;
  readonly index: number;
}

/** One end of a split. */
export function LegFields({ split: { id }, leg, index }: LegFieldsProps) {
  const name = `Leg ${index + 1}`;
  const set = (next: Leg) => editPatch(name, (from) => replaceLeg(from, id, index, next));
  return (
    <fieldset className="leg">
      <legend>
        {name}: {leg.to === 'channel' ? 'the channel of the mic' : leg.name}
      </legend>
      {leg.to === 'other' && (
        <TextField
          label="Goes to"
          value={leg.name}
          most={80}
          onSet={(text) => set({ ...leg, name: text })}
        />
      )}
      <SelectField
        label="Connection"
        value={leg.connection}
        options={CONNECTIONS}
        onChoose={(to) => set({ ...leg, connection: to === 'isolated' ? 'isolated' : 'direct' })}
      />
      {leg.to === 'other' && (
        <CheckField
          label="Gives 48 V"
          checked={leg.phantom}
          onSet={(phantom) => set({ ...leg, phantom })}
        />
      )}
      <CheckField
        label="Pin 1 lifted"
        checked={leg.lifted}
        onSet={(lifted) => set({ ...leg, lifted })}
      />
      <NumberField
        label="Input impedance"
        step={`${name}: impedance`}
        value={leg.impedance}
        measure={OHMS}
        limits={limitsOf(otherLeg.shape.impedance)}
        apply={(layout, impedance) =>
          changePatch(layout, (from) => replaceLeg(from, id, index, { ...leg, impedance }))
        }
      />
      <button
        type="button"
        onClick={() => editPatch(`Remove ${name}`, (from) => removeLeg(from, id, index))}
      >
        Remove leg {index + 1}
      </button>
    </fieldset>
  );
}
