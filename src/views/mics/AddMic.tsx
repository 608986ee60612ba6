import { useState } from 'react';
import { MIC_CLASSES } from '../../layout/catalogue/micClasses.ts';
import { micSources } from '../../layout/catalogue/offered/offeredMics.ts';
import { edit, session } from '../../session/session.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { usePanel } from '../panel/usePanel.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { withUsualMic } from './withUsualMic.ts';

/** A mic of a chosen class for a chosen source, also a second one for the same. */
export function AddMic() {
  const { layout } = useOpen();
  const panel = usePanel();
  const groups = micSources(layout);
  const [source, setSource] = useState(0);
  const [micClass, setMicClass] = useState<string>('short-dynamic');
  const [problem, setProblem] = useState('');
  const group = groups[source] ?? groups[0];
  if (!group) return null;
  const classes = [...MIC_CLASSES, ...layout.ownClasses];
  const add = () => {
    edit(`Mic for ${group.name}`, (from) => withUsualMic(from, group.hears, micClass));
    const after = session.getState().open?.layout;
    const added = after?.mics.at(-1);
    if (!added || after === layout) {
      setProblem('This class has no usual place there. Choose another class or source.');
      return;
    }
    setProblem('');
    panel.open({ kind: 'mic', id: added.id });
  };
  return (
    <section className="group" aria-labelledby="add-mic">
      <h3 id="add-mic">Another mic</h3>
      <div className="field-grid">
        <div className="wide">
          <SelectField
            label="For"
            value={String(groups.indexOf(group))}
            options={groups.map(({ name }, index) => ({ value: String(index), text: name }))}
            onChoose={(value) => setSource(Number(value))}
          />
        </div>
        <div className="wide">
          <SelectField
            label="Class of mic"
            value={micClass}
            options={classes.map(({ id, name }) => ({ value: id, text: name }))}
            onChoose={setMicClass}
          />
        </div>
        <button type="button" className="wide" onClick={add}>
          <Icon name="plus" /> Add this mic
        </button>
        {problem && (
          <p className="field-problem whole" role="alert">
            {problem}
          </p>
        )}
      </div>
    </section>
  );
}
