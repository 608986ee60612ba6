import { addOwnClass } from '../../layout/edit/ownClasses.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import { edit } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { OwnClassFields } from './OwnClassFields.tsx';

/** What a new class starts as: a short dynamic. */
const start: MicClass = {
  id: 'own-mic',
  name: 'My mic',
  length: 120,
  diameter: 36,
  address: 'end',
  patternA: 0.5,
  type: 'dynamic',
  phantom: false,
  connector: 'straight',
  mass: 0.25,
};

/** Mic classes of the user's own, for what the built-in ones do not fit. */
export function OwnClasses() {
  const { ownClasses } = useOpen().layout;
  return (
    <details className="group">
      <summary>
        <h3>Own mic classes</h3>
      </summary>
      <p className="field-hint">Measure a mic that the usual classes do not fit.</p>
      {ownClasses.map((own) => (
        <OwnClassFields key={own.id} own={own} />
      ))}
      <button
        type="button"
        disabled={ownClasses.length >= 40}
        onClick={() => edit('Add a mic class', (layout) => addOwnClass(layout, start))}
      >
        <Icon name="plus" /> Add a class
      </button>
    </details>
  );
}
