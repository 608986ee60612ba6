import { changeOwnClass, removeOwnClass } from '../../layout/edit/ownClasses.ts';
import { type MicClass, micClassSchema } from '../../layout/mics/micClass.ts';
import { edit } from '../../session/session.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { Choice } from '../fields/Choice.tsx';
import { FINE_LENGTH, KILOGRAMS, type Measure, SHARE } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { Icon } from '../parts/Icon.tsx';
import { micTypeWords, patternWords } from '../words/kindWords.ts';

interface OwnClassFieldsProps {
  readonly own: MicClass;
}

const connectors: Readonly<Record<MicClass['connector'], string>> = {
  straight: 'Straight plug behind',
  rightAngle: 'Right-angle plug',
  thinCable: 'Thin cable of its own',
};

/** The size, pattern and needs of one own class. */
export function OwnClassFields({ own }: OwnClassFieldsProps) {
  const change = (patch: Partial<Omit<MicClass, 'id'>>) =>
    edit(`Class ${own.name}`, (layout) => changeOwnClass(layout, own.id, patch));
  return (
    <div className="field-grid boxed">
      <div className="wide">
        <TextField
          label="Name of the class"
          value={own.name}
          most={80}
          onSet={(name) => change({ name })}
        />
      </div>
      <OwnNumbers own={own} />
      <div className="wide">
        <SelectField
          label="Works as"
          value={own.type}
          options={micClassSchema.shape.type.options.map((value) => ({
            value,
            text: micTypeWords(value),
          }))}
          onChoose={(value) => {
            const type = micClassSchema.shape.type.options.find((option) => option === value);
            if (type) change({ type });
          }}
        />
      </div>
      <div className="wide">
        <SelectField
          label="Connector"
          value={own.connector}
          options={micClassSchema.shape.connector.options.map((value) => ({
            value,
            text: connectors[value],
          }))}
          onChoose={(value) => {
            const { options } = micClassSchema.shape.connector;
            const connector = options.find((option) => option === value);
            if (connector) change({ connector });
          }}
        />
      </div>
      <Choice
        label="Faces with its"
        value={own.address}
        options={[
          { value: 'end', text: 'End' },
          { value: 'side', text: 'Side' },
        ]}
        onChoose={(address) => change({ address })}
      />
      <CheckField
        label="Needs 48 V"
        checked={own.phantom}
        onSet={(phantom) => change({ phantom })}
      />
      <button
        type="button"
        className="danger whole"
        onClick={() => edit(`Remove ${own.name}`, (layout) => removeOwnClass(layout, own.id))}
      >
        <Icon name="bin" /> Remove<span className="spoken"> {own.name}</span>
      </button>
    </div>
  );
}

function OwnNumbers({ own }: OwnClassFieldsProps) {
  const number = (
    key: 'length' | 'diameter' | 'patternA' | 'mass',
    label: string,
    measure: Measure,
  ) => (
    <NumberField
      label={label}
      step={`Class ${own.name}`}
      value={own[key]}
      measure={measure}
      limits={limitsOf(micClassSchema.shape[key])}
      apply={(layout, value) => changeOwnClass(layout, own.id, { [key]: value })}
    />
  );
  return (
    <>
      {number('length', 'Body length', FINE_LENGTH)}
      {number('diameter', 'Body diameter', FINE_LENGTH)}
      {number('mass', 'Mass', KILOGRAMS)}
      {number(
        'patternA',
        `Omni share of the pattern: ${patternWords(own.patternA).toLowerCase()}`,
        SHARE,
      )}
      <p className="whole field-hint">
        How much of the pattern hears all round alike; the rest hears front and back. Omni 1,
        cardioid 0.5, supercardioid 0.37, figure-8 0.
      </p>
    </>
  );
}
