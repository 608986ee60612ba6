import { useState } from 'react';
import { stockSchema } from '../../layout/cabling.ts';
import { carriedOf, offeredLengths } from '../../layout/catalogue/cableLengths.ts';
import { setStock } from '../../layout/edit/stage.ts';
import { edit } from '../../session/session.ts';
import { showCableLength } from '../../units/lengthText.ts';
import { FieldProblem } from '../fields/FieldProblem.tsx';
import { CABLE_LENGTH, COUNT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf, readField } from '../fields/reading.ts';
import { useBroughtUp } from '../panel/usePanel.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';

const { length: lengthField, count: countField } = stockSchema.element.shape;

/** The cables carried: how many of each length. */
export function StockFields() {
  const { layout } = useOpen();
  const { cabling, units } = layout;
  const heading = useBroughtUp('stock');
  return (
    <section className="group">
      <h3 ref={heading} tabIndex={-1}>
        Cables carried
      </h3>
      {cabling.stock.length === 0 && (
        <p className="field-hint">None listed, so no cable is chosen for the runs.</p>
      )}
      <div className="field-grid">
        {offeredLengths(layout).map((length) => {
          const name = showCableLength(length, units);
          return (
            <NumberField
              key={length}
              label={name}
              step={`Cables of ${name}`}
              value={carriedOf(layout, length)}
              measure={COUNT}
              limits={limitsOf(countField)}
              apply={(layout, to) => setStock(layout, length, to)}
            />
          );
        })}
      </div>
      <p className="field-hint">Usual lengths stay here at 0; another one goes off the list.</p>
      <NewLength />
    </section>
  );
}

function NewLength() {
  const { units } = useOpen().layout;
  const [text, setText] = useState('');
  const [problem, setProblem] = useState('');
  const add = () => {
    const reading = readField(text, CABLE_LENGTH, limitsOf(lengthField), units);
    if (!reading.ok) return setProblem(reading.message);
    setProblem('');
    setText('');
    const length = reading.value;
    edit(`Add ${showCableLength(length, units)} cables`, (layout) => {
      const has = layout.cabling.stock.some((row) => row.length === length);
      return has ? layout : setStock(layout, length, 1);
    });
  };
  return (
    <form
      className="inline-form"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div className="field">
        <label className="field-label" htmlFor="new-cable-length">
          New length, {CABLE_LENGTH.unitText(units)}
        </label>
        <input
          id="new-cable-length"
          className="text-input"
          autoComplete="off"
          value={text}
          onChange={(event) => setText(event.target.value)}
          aria-invalid={problem !== '' || undefined}
          aria-describedby={problem ? 'new-cable-problem' : undefined}
        />
      </div>
      <button type="submit">
        <Icon name="plus" /> Add length
      </button>
      <FieldProblem id="new-cable-problem" text={problem} />
    </form>
  );
}
