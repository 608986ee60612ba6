import { useEffect, useId, useRef, useState } from 'react';
import { addSignOff } from '../../../layout/edit/signOffs.ts';
import type { Answer } from '../../../layout/signOff.ts';
import { edit, showPage } from '../../../session/session.ts';
import { answersOf, goTo, startAgain, useSigning } from '../../../session/signing.ts';
import { showLength } from '../../../units/lengthText.ts';
import { FieldProblem } from '../../fields/FieldProblem.tsx';
import { Icon } from '../../parts/Icon.tsx';
import { useActions } from '../../parts/useActions.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { useTask } from '../../parts/useTask.ts';
import { capitalised } from '../../words/nameOf.ts';
import { sceneNames } from '../../words/signOffWords.ts';
import { SignWarnings } from './SignWarnings.tsx';

/** The end: what is to be moved, and whether the whole is agreed to, with name and time. */
export function Consent({ onSigned }: { readonly onSigned: () => void }) {
  const { layout } = useOpen();
  const asking = useSigning();
  const heading = useRef<HTMLHeadingElement>(null);
  const { name, setName, problem, sign, busy } = useConsent(onSigned);
  const nameId = useId();
  useEffect(() => heading.current?.focus(), []);
  const answers = answersOf(asking, layout, false);
  const moves = answers.filter(({ answer }) => answer === 'move');
  return (
    <>
      <h2 ref={heading} tabIndex={-1}>
        {moves.length === 0 ? 'All fine' : 'This should change'}
      </h2>
      {moves.length > 0 && <Moves moves={moves} />}
      <SignWarnings />
      <p>
        I have seen where mics and stands are, and agree to play the kit as it is shown
        {moves.length > 0 && ', with the changes asked for above still to come'}.
      </p>
      <div className="field">
        <label className="field-label" htmlFor={nameId}>
          Name
        </label>
        <input
          id={nameId}
          className="text-input"
          value={name}
          maxLength={80}
          aria-invalid={problem !== '' || undefined}
          aria-describedby={problem === '' ? undefined : `${nameId}-problem`}
          onChange={(event) => setName(event.target.value)}
        />
        <FieldProblem id={`${nameId}-problem`} text={problem} />
      </div>
      <div className="sign-answers">
        <button
          type="button"
          className={moves.length === 0 ? 'sign-answer primary' : 'sign-answer'}
          disabled={busy}
          onClick={() => sign(true)}
        >
          <Icon name="check" /> I agree
        </button>
        <button
          type="button"
          className={moves.length === 0 ? 'sign-answer' : 'sign-answer primary'}
          disabled={busy}
          onClick={() => sign(false)}
        >
          <Icon name="target" /> Not yet
        </button>
      </div>
      <button type="button" className="quiet" onClick={() => goTo({ at: 'start' })}>
        <Icon name="back" /> From the beginning
      </button>
    </>
  );
}

/** The name, and signing with it: what is signed is saved first, so that a sign-off never stands on what was lost. */
function useConsent(onSigned: () => void) {
  const { layout } = useOpen();
  const asking = useSigning();
  const actions = useActions();
  const task = useTask();
  const [name, setName] = useState(layout.player.name);
  const [missing, setMissing] = useState('');
  const sign = (consent: boolean) => {
    const by = name.trim();
    setMissing(by === '' ? 'A name is needed: 1 to 80 characters.' : '');
    if (by === '') return;
    task.run('Signing', async () => {
      await actions.saveNow();
      const at = new Date().toISOString().replace(/\.\d+Z$/, 'Z');
      edit(consent ? `Sign-off by ${by}` : `Not agreed to by ${by}`, (from) => {
        const answers = answersOf(asking, from, consent);
        return addSignOff(from, { name: by, at, consent, answers, notes: '' });
      });
      startAgain(null, []);
      onSigned();
      if (!consent) showPage(null);
    });
  };
  return { name, setName, problem: missing || task.failure, sign, busy: task.busy };
}

function Moves({ moves }: { readonly moves: readonly Answer[] }) {
  const { layout, report } = useOpen();
  const spotWords = (answer: Answer): string => {
    if (!('wish' in answer) || !answer.wish) return '';
    const tip = report.rig.mics.find(({ mic }) => mic.id === answer.mic)?.tip;
    const far = tip && Math.hypot(answer.wish.x - tip.x, answer.wish.y - tip.y);
    return far === undefined
      ? ', to the spot on the plan'
      : `, to the spot on the plan, ${showLength(far, layout.units)} from where it is`;
  };
  return (
    <ul className="stale-list">
      {moves.map((answer) => {
        const name =
          answer.about === 'mic' ? capitalised(answer.name) : capitalised(sceneNames[answer.about]);
        return (
          <li key={'mic' in answer ? answer.mic : answer.about}>
            {name}: move it{spotWords(answer)}
            {answer.note !== '' && `. “${answer.note}”`}
          </li>
        );
      })}
    </ul>
  );
}
