import { useEffect, useRef, useState } from 'react';
import { offeredLengths } from '../../../layout/catalogue/cableLengths.ts';
import { type Edge, nextVenue, toggledStairs } from '../../../report/nextVenue.ts';
import { showPage } from '../../../session/session.ts';
import { showCableLength } from '../../../units/lengthText.ts';
import { CheckField } from '../../fields/CheckField.tsx';
import { Choice } from '../../fields/Choice.tsx';
import { DateField } from '../../fields/DateField.tsx';
import { FieldProblem } from '../../fields/FieldProblem.tsx';
import { COUNT } from '../../fields/measure.ts';
import { newLayoutId } from '../../library/newLayoutId.ts';
import { Icon } from '../../parts/Icon.tsx';
import { useActions } from '../../parts/useActions.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { type Task, useTask } from '../../parts/useTask.ts';
import { FormNumber } from './FormNumber.tsx';
import { FormPart, FormText } from './FormPart.tsx';
import { useVenueDraft } from './useVenueDraft.ts';
import { formNumbers, type NumberKey, readForm, type VenueForm } from './venueForm.ts';

const edges: readonly { readonly value: Edge; readonly text: string }[] = [
  { value: 'front', text: 'Front' },
  { value: 'back', text: 'Back' },
  { value: 'left', text: "Player's left" },
  { value: 'right', text: "Player's right" },
];

/** What the next venue is like: kit, player and mics go there as they are. */
export function NextVenuePage() {
  const { layout, report } = useOpen();
  const actions = useActions();
  const task = useTask();
  const { form, change, forget } = useVenueDraft(layout);
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const page = useRef<HTMLDivElement>(null);
  // The first field that can't be used takes the focus, and with it comes into view.
  useEffect(() => {
    if (Object.keys(problems).length === 0) return;
    page.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }, [problems]);
  const start = () => {
    const reading = readForm(form, layout, newLayoutId());
    setProblems(reading.ok ? {} : reading.problems);
    if (!reading.ok) return;
    task.run('Starting the next venue', async () => {
      await actions.startNext(nextVenue(layout, reading.next));
      forget();
      showPage('changed');
    });
  };
  const numbers = (keys: readonly NumberKey[]) =>
    keys.map((key) => (
      <FormNumber
        key={key}
        label={formNumbers[key].label}
        measure={formNumbers[key].measure}
        unit={layout.units}
        text={form.numbers[key]}
        problem={problems[key]}
        onType={(text) => change({ numbers: { ...form.numbers, [key]: text } })}
      />
    ));
  return (
    <div className="venue-form" ref={page}>
      <p>
        Kit, player and mics go along as they are.{' '}
        {report.signOff.kind === 'holds'
          ? 'They are signed off, and stay so: deck, box and cables are no part of it.'
          : 'They are not signed off as they stand: the drummer can do that here or there.'}
      </p>
      <FormPart title="Venue">
        <FormText
          label="Name of the layout"
          value={form.name}
          problem={problems['name']}
          onType={(name) => change({ name })}
        />
        <FormText
          label="Name of the venue"
          value={form.venueName}
          problem={problems['venueName']}
          onType={(venueName) => change({ venueName })}
        />
        <DateField label="Date" value={form.date} onSet={(date) => change({ date })} />
        {numbers(['temperature', 'humidity'])}
      </FormPart>
      <FormPart title="Deck">{numbers(['width', 'depth', 'height'])}</FormPart>
      <StageChoices form={form} change={change} />
      <FormPart title="Cables carried">
        {offeredLengths(layout).map((length) => (
          <FormNumber
            key={length}
            label={showCableLength(length, layout.units)}
            measure={COUNT}
            unit={layout.units}
            text={form.stock[String(length)] ?? ''}
            problem={problems[`stock:${length}`]}
            onType={(text) => change({ stock: { ...form.stock, [String(length)]: text } })}
          />
        ))}
      </FormPart>
      <Send task={task} hasProblems={Object.keys(problems).length > 0} onStart={start} />
    </div>
  );
}

interface StageChoicesProps {
  readonly form: VenueForm;
  readonly change: (part: Partial<VenueForm>) => void;
}

/** Where the stairs are, and at which edge the box stands. */
function StageChoices({ form, change }: StageChoicesProps) {
  return (
    <>
      <fieldset className="venue-edges">
        <legend className="field-label">Stairs</legend>
        {edges.map(({ value, text }) => (
          <CheckField
            key={value}
            label={text}
            checked={form.stairs.some(({ edge }) => edge === value)}
            onSet={(wanted) => change({ stairs: toggledStairs(form.stairs, value, wanted) })}
          />
        ))}
      </fieldset>
      <Choice
        label="Box at"
        value={form.boxEdge ?? 'same'}
        options={[{ value: 'same', text: 'The same place' }, ...edges]}
        onChoose={(value) => change({ boxEdge: value === 'same' ? null : value })}
      />
    </>
  );
}

interface SendProps {
  readonly task: Task;
  readonly hasProblems: boolean;
  readonly onStart: () => void;
}

function Send({ task, hasProblems, onStart }: SendProps) {
  return (
    <div className="page-buttons">
      <button type="button" className="primary" disabled={task.busy} onClick={onStart}>
        <Icon name="forward" /> Start there
      </button>
      <FieldProblem text={hasProblems ? "Something above can't be used yet." : ''} />
      <FieldProblem text={task.failure} />
    </div>
  );
}
