import { STAND_CLASSES, standSpec } from '../../layout/catalogue/standClasses.ts';
import {
  aimMic,
  moveMic,
  moveMicBase,
  moveMicTip,
  setMast,
  setStandClass,
  turnMicStand,
} from '../../layout/edit/mics.ts';
import { azimuthField, heightField } from '../../layout/fields.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { type StandMount, standMount } from '../../layout/mics/mount.ts';
import { standFactsOf } from '../../report/standFacts.ts';
import { edit } from '../../session/session.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { clockNote, DIRECTION, LENGTH, TILT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { type Limits, limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { DIRECTION_HINT, Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { standFactsWords } from '../words/standFactsWords.ts';
import { InsertionField } from './InsertionField.tsx';
import { SpotFields } from './SpotFields.tsx';
import { useMicName } from './useMicName.ts';

interface StandFieldsProps {
  readonly mic: Mic;
  readonly stand: StandMount;
}

/** The mic's tip and aim, and the stand under it. The tip moves without the base, the base without the tip. */
export function StandFields(props: StandFieldsProps) {
  return (
    <>
      <TipFields {...props} />
      <BaseFields {...props} />
      <WholeFields {...props} />
    </>
  );
}

function TipFields({ mic, stand }: StandFieldsProps) {
  const { id } = mic;
  const name = useMicName(mic);
  return (
    <Group title="Tip of the mic" hint={DIRECTION_HINT}>
      <SpotFields of={name} spot={stand.tip} apply={(layout, to) => moveMicTip(layout, id, to)} />
      <NumberField
        label="Height of the tip"
        step={`Height of ${name}`}
        value={stand.tip.z}
        measure={LENGTH}
        limits={limitsOf(heightField)}
        apply={(layout, z) => moveMicTip(layout, id, { x: stand.tip.x, y: stand.tip.y, z })}
      />
      <InsertionField mic={mic} />
      <NumberField
        label="Points toward"
        note={clockNote(stand.azimuth)}
        step={`Aim ${name}`}
        value={stand.azimuth}
        measure={DIRECTION}
        limits={limitsOf(azimuthField)}
        round
        apply={(layout, azimuth) => aimMic(layout, id, { azimuth })}
      />
      <NumberField
        label="Points down by"
        step={`Aim ${name}`}
        value={0 - stand.pitch}
        measure={TILT}
        limits={downward(limitsOf(standMount.shape.pitch))}
        apply={(layout, down) => aimMic(layout, id, { pitch: 0 - down })}
      />
    </Group>
  );
}

/** A stand's mic is kept by how far it points up and said, as that of a clip, by how far down. */
const downward = ({ low, high }: Limits): Limits => ({ low: -high, high: -low });

function BaseFields({ mic, stand }: StandFieldsProps) {
  const { id } = mic;
  const name = useMicName(mic);
  const spec = standSpec(stand.stand);
  const facts = standFactsOf(useOpen().report, id);
  const words = facts && standFactsWords(facts, stand.stand);
  return (
    <Group title="Stand" hint="The base moves without the mic; the boom follows.">
      <div className="wide">
        <SelectField
          label="Class of stand"
          value={stand.stand}
          options={STAND_CLASSES.map((each) => ({ value: each.standClass, text: each.name }))}
          onChoose={(value) => {
            const chosen = STAND_CLASSES.find((each) => each.standClass === value);
            if (!chosen) return;
            edit(`Stand of ${name}`, (layout) => setStandClass(layout, id, chosen.standClass));
          }}
        />
      </div>
      <SpotFields
        of={`the base of ${name}`}
        spot={stand.base}
        apply={(layout, to) => moveMicBase(layout, id, to)}
      />
      {spec.base === 'tripod' && (
        <NumberField
          label="First foot toward"
          step={`Turn the feet of ${name}`}
          value={stand.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => turnMicStand(layout, id, turn)}
        />
      )}
      {spec.boomMax > 0 && <MastFields mic={mic} stand={stand} />}
      {words && <p className="whole field-hint">{words.firm}</p>}
      {words?.smaller !== undefined && <p className="whole field-hint">{words.smaller}</p>}
    </Group>
  );
}

function MastFields({ mic, stand }: StandFieldsProps) {
  const { id } = mic;
  const name = useMicName(mic);
  const { report } = useOpen();
  const placed = report.rig.mics.find((each) => each.mic.id === id)?.stand;
  const step = `Mast of ${name}`;
  const now = Math.round(stand.mast ?? placed?.clutch.z ?? standSpec(stand.stand).mastMin);
  return (
    <>
      <NumberField
        label="Height of the mast"
        step={step}
        value={now}
        measure={LENGTH}
        limits={limitsOf(heightField)}
        apply={(layout, mast) => setMast(layout, id, mast)}
      />
      <div className="wide">
        <CheckField
          label="Mast follows, the boom as level as it can be"
          checked={stand.mast === null}
          onSet={(follows) => edit(step, (layout) => setMast(layout, id, follows ? null : now))}
        />
      </div>
    </>
  );
}

function WholeFields({ mic, stand }: StandFieldsProps) {
  const { id } = mic;
  const name = useMicName(mic);
  return (
    <Group title="Stand and mic together" folded>
      <SpotFields
        of={`the stand and ${name}`}
        spot={stand.base}
        apply={(layout, to) => {
          const mount = layout.mics.find((each) => each.id === id)?.mount;
          if (mount?.kind !== 'stand') return layout;
          return moveMic(layout, id, { x: to.x - mount.base.x, y: to.y - mount.base.y });
        }}
      />
    </Group>
  );
}
