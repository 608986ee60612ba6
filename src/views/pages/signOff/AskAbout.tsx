import { useEffect, useRef } from 'react';
import { whyNot } from '../../../report/judgement.ts';
import {
  goTo,
  keyOf,
  type Question,
  questionAt,
  say,
  stepBeside,
  useSigning,
} from '../../../session/signing.ts';
import { NotesField } from '../../fields/NotesField.tsx';
import { Icon } from '../../parts/Icon.tsx';
import { useOpen } from '../../parts/useOpen.ts';
import { VerdictMark } from '../../parts/VerdictMark.tsx';
import { clearanceWords, movingWords } from '../../words/clearanceWords.ts';
import { findingWords } from '../../words/findingWords.ts';
import { capitalised, nameOf } from '../../words/nameOf.ts';
import { wishKeptWords } from '../../words/signOffWords.ts';
import { troublesOf } from '../../words/troubleWords.ts';
import { severityVerdict } from '../../words/verdictWords.ts';
import { SceneWarnings } from './SignWarnings.tsx';
import { WishSpot } from './WishSpot.tsx';

const scenes = {
  stands: {
    title: 'The stands',
    text: 'Do any feet, masts or booms stand where your feet go, or where you reach?',
  },
  lane: {
    title: 'The way out',
    text: 'Can you get to the throne and away from it, in the dark too?',
  },
} as const;

/** One question: what it is about, fine or move it. */
export function AskAbout() {
  const asking = useSigning();
  const question = questionAt(asking);
  const heading = useRef<HTMLHeadingElement>(null);
  const key = question ? keyOf(question) : '';
  // Every question is a page of its own for whoever reads by ear.
  useEffect(() => {
    if (key !== '') heading.current?.focus();
  }, [key]);
  if (!question) return null;
  const said = asking.said[key];
  const next = () => goTo(stepBeside(asking, 1));
  const isMove = said?.answer === 'move';
  return (
    <>
      <p className="soft sign-count">{countWords(asking.asked.length, asking.step)}</p>
      <h2 ref={heading} tabIndex={-1}>
        <Title question={question} />
      </h2>
      <About question={question} />
      <div className="sign-answers">
        <button
          type="button"
          className="sign-answer primary"
          onClick={() => {
            say(question, { answer: 'fine', wish: null });
            next();
          }}
        >
          <Icon name="check" /> Fine
        </button>
        <button
          type="button"
          className="sign-answer"
          aria-pressed={isMove}
          onClick={() => say(question, { answer: 'move' })}
        >
          <Icon name="target" /> Move it
        </button>
      </div>
      {isMove && (
        <div className="sign-wish">
          {question.about === 'mic' && <WishSpot mic={question.mic} wish={said.wish} />}
          <NotesField
            label="What should change?"
            value={said.note}
            most={400}
            rows={2}
            onSet={(note) => say(question, { note })}
          />
          <button type="button" className="primary" onClick={next}>
            Next <Icon name="forward" />
          </button>
        </div>
      )}
      <button type="button" className="quiet" onClick={() => goTo(stepBeside(asking, -1))}>
        <Icon name="back" /> Back
      </button>
    </>
  );
}

function countWords(mics: number, step: { readonly at: string; readonly index?: number }): string {
  if (step.at === 'mic') return `Mic ${(step.index ?? 0) + 1} of ${mics}`;
  return step.at === 'stands' ? 'After the mics' : 'Last question';
}

function Title({ question }: { readonly question: Question }) {
  const { layout } = useOpen();
  return question.about === 'mic'
    ? capitalised(nameOf(layout, question.mic))
    : scenes[question.about].title;
}

function About({ question }: { readonly question: Question }) {
  const { layout, report } = useOpen();
  if (question.about !== 'mic') {
    return (
      <>
        <p>{scenes[question.about].text}</p>
        <SceneWarnings scene={question.about} />
      </>
    );
  }
  const row = report.clearances.find(({ mic }) => mic === question.mic);
  if (!row) return null;
  const kept = wishKeptWords(question.mic, layout, report);
  const why = whyNot(question.mic, report);
  const isRoom = troublesOf(row, report).length === 0;
  return (
    <>
      {kept !== null && <p>{capitalised(kept)}.</p>}
      {isRoom && (
        <p className="sign-verdict">
          <VerdictMark verdict={row.verdict} />
          <span>{capitalised(clearanceWords(row, layout))}</span>
        </p>
      )}
      {why.map((finding) => (
        <p key={finding.key} className="sign-verdict">
          <VerdictMark verdict={severityVerdict(finding.severity)} />
          <span>{findingWords(finding, layout).title}</span>
        </p>
      ))}
      {!isRoom && <p>{movingWords(row, why, layout)}</p>}
    </>
  );
}
