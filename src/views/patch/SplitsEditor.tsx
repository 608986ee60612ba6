import { useState } from 'react';
import { freshId } from '../../layout/edit/ids.ts';
import { changePatch } from '../../layout/edit/patch.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { patchSchema, type Split } from '../../layout/patch.ts';
import { addLeg, addSplit, changeSplit, removeSplit } from '../../patch/splits/editSplits.ts';
import { usualLeg, usualSplit } from '../../patch/splits/split.ts';
import { splitLoad } from '../../patch/splits/splitLoad.ts';
import { edit } from '../../session/session.ts';
import { OHMS } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { findingWords } from '../words/findingWords.ts';
import { capitalised, nameOf } from '../words/nameOf.ts';
import { LegFields } from './LegFields.tsx';
import { editPatch } from './usePatch.ts';

const MOST_LEGS = 8;
const KINDS = [
  { value: 'transformer', text: 'Transformer splitter' },
  { value: 'y', text: 'Plain Y lead' },
] as const;

/** One signal to several places. */
export function SplitsEditor() {
  const { layout } = useOpen();
  const [mic, setMic] = useState('');
  const options = layout.mics.map(({ id }) => ({ value: id, text: nameOf(layout, id) }));
  const of = options.find(({ value }) => value === mic)?.value ?? options[0]?.value;
  const add = () => {
    if (of === undefined) return;
    edit(`Split ${nameOf(layout, of)}`, (from) =>
      changePatch(from, (patch) =>
        addSplit(patch, usualSplit(freshId(from, 'split'), of, otherEnd(from, of))),
      ),
    );
  };
  return (
    <>
      <p className="field-hint">
        Plug and unplug with the channel muted and 48 V off. Lift only pin 1 of an audio line, never
        a mains earth.
      </p>
      {layout.patch.splits.map((split) => (
        <SplitCard key={split.id} split={split} />
      ))}
      {layout.patch.splits.length === 0 && <p className="empty">No signal is split.</p>}
      <MicImpedance />
      {of !== undefined && (
        <section className="group">
          <h3>New split</h3>
          <SelectField label="Signal of" value={of} options={options} onChoose={setMic} />
          <div className="buttons">
            <button type="button" onClick={add}>
              Add split
            </button>
          </div>
        </section>
      )}
    </>
  );
}

/** What the loads of splits are reckoned against. */
function MicImpedance() {
  const { micImpedance } = useOpen().layout.patch;
  return (
    <Group
      title="Source impedance"
      hint="The loads of splits are reckoned against it. It stands in a mic’s data sheet; 150 to 200 Ω is usual for stage mics."
      folded
    >
      <NumberField
        label="Source impedance of the mics"
        step="Source impedance"
        value={micImpedance}
        measure={{ ...OHMS, step: () => 50 }}
        limits={limitsOf(patchSchema.shape.micImpedance)}
        apply={(layout, ohms) => changePatch(layout, (from) => ({ ...from, micImpedance: ohms }))}
      />
    </Group>
  );
}

function SplitCard({ split }: { readonly split: Split }) {
  const { layout } = useOpen();
  const { id, of, kind, legs } = split;
  const ends = legs.map((leg, index) => ({ leg, index }));
  const name = sourceName(layout, of);
  const sources = [
    ...(layout.mics.some((mic) => mic.id === of) ? [] : [{ value: of, text: capitalised(name) }]),
    ...layout.mics.map((mic) => ({ value: mic.id, text: nameOf(layout, mic.id) })),
  ];
  return (
    <section className="group split-card" aria-label={`Split of ${name}`}>
      <h3>Split of {name}</h3>
      <SplitFindings split={split} />
      <SplitLoadLine split={split} />
      <SelectField
        label="Signal of"
        value={of}
        options={sources}
        onChoose={(to) =>
          editPatch('Signal of a split', (from) => changeSplit(from, id, { of: to }))
        }
      />
      <SelectField
        label="Kind"
        value={kind}
        options={KINDS}
        onChoose={(to) =>
          editPatch('Kind of a split', (from) =>
            changeSplit(from, id, { kind: to === 'y' ? 'y' : 'transformer' }),
          )
        }
      />
      {ends.map(({ leg, index }) => (
        <LegFields key={index} split={split} leg={leg} index={index} />
      ))}
      <div className="buttons">
        <button
          type="button"
          disabled={legs.length >= MOST_LEGS}
          onClick={() =>
            editPatch('Add a leg', (from) => addLeg(from, id, usualLeg(kind, 'Recorder')))
          }
        >
          Add leg
        </button>
        <button
          type="button"
          className="danger"
          onClick={() => editPatch('Remove a split', (from) => removeSplit(from, id))}
        >
          Remove split
        </button>
      </div>
    </section>
  );
}

/** What a split takes its signal from: a mic, wrongly another split, or nothing. */
function sourceName(layout: Layout, of: Id): string {
  if (layout.mics.some(({ id }) => id === of)) return nameOf(layout, of);
  const isSplit = layout.patch.splits.some(({ id }) => id === of);
  return isSplit ? 'another split' : 'nothing: its mic is gone';
}

/** What all legs together are to the mic, and what that costs. */
function SplitLoadLine({ split: { legs } }: { readonly split: Split }) {
  const { micImpedance } = useOpen().layout.patch;
  if (legs.length === 0) return null;
  const { load, lost } = splitLoad(
    micImpedance,
    legs.map(({ impedance }) => impedance),
  );
  return (
    <p className="soft">
      All legs together load the mic with {Math.round(load)} Ω; a leg loses at most{' '}
      {Math.max(...lost).toFixed(1)} dB to the others.
    </p>
  );
}

/** Where a signal usually goes as well: a kick's to the seat shaker, any other to monitors (common practice, no source). */
function otherEnd({ mics, pieces }: Layout, of: Id): string {
  const own = mics.find(({ id }) => id === of)?.hears[0];
  return pieces.some(({ id, kind }) => id === own && kind === 'kick') ? 'Seat shaker' : 'Monitors';
}

/** What is wrong with one split, with the reason. */
function SplitFindings({ split }: { readonly split: Split }) {
  const { layout, report } = useOpen();
  const found = report.findings.filter(({ key }) => key.split(':')[1] === split.id);
  if (found.length === 0) return <p className="field-hint">Nothing is wrong with it.</p>;
  return (
    <ul className="split-findings">
      {found.map((finding) => {
        const { title, detail, next } = findingWords(finding, layout);
        return (
          <li key={finding.key} className={`split-finding ${finding.severity}`}>
            <strong>{title}.</strong> {detail} <span className="next">{next}</span>
          </li>
        );
      })}
    </ul>
  );
}
