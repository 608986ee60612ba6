import { tickStep } from '../../layout/edit/setUp.ts';
import type { SetUpStep } from '../../report/placement/steps.ts';
import { edit } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { useTapGuard } from '../parts/useTapGuard.ts';
import { SET_UP_KEY, stageWords, stepWords } from '../words/setUpWords.ts';
import { StepWarnings } from './StepWarnings.tsx';

interface StepCardProps {
  readonly step: SetUpStep;
  /** The mark by which the sheets name it. */
  readonly mark: string;
  readonly place: { readonly at: number; readonly of: number };
  readonly onGo: (index: number) => void;
}

/** The step at hand, large enough to read from the floor. */
export function StepCard({ step, mark, place, onGo }: StepCardProps) {
  const { layout, report } = useOpen();
  const { title, lines } = stepWords(step, layout, report);
  const isDone = layout.setUp.done.includes(step.key);
  const counts = useTapGuard(step.key);
  const tick = (): void => {
    edit(isDone ? `Not done: ${title}` : `Done: ${title}`, (from) =>
      tickStep(from, step.key, !isDone),
    );
    if (!isDone) onGo(place.at + 1);
  };
  return (
    <section className="step-card" aria-labelledby="step-title">
      <p className="step-stage">
        Step {place.at + 1} of {place.of} · {stageWords(step.stage)}
      </p>
      <h2 id="step-title" aria-live="polite">
        {mark !== '' && <span className="step-mark">{mark}</span>} {title}
      </h2>
      <StepWarnings step={step} />
      <ul className="step-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div className="step-buttons">
        <button type="button" disabled={place.at === 0} onClick={() => onGo(place.at - 1)}>
          <Icon name="back" /> Back
        </button>
        <button
          type="button"
          className={isDone ? 'step-done' : 'primary step-done'}
          onClick={(event) => counts(event) && tick()}
        >
          <Icon name={isDone ? 'undo' : 'check'} /> {isDone ? 'Not done' : 'Done'}
        </button>
        <button
          type="button"
          disabled={place.at === place.of - 1}
          onClick={() => onGo(place.at + 1)}
        >
          Skip <Icon name="forward" />
        </button>
      </div>
      <p className="small soft">{SET_UP_KEY}</p>
    </section>
  );
}
