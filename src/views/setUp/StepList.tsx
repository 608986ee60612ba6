import { tickStep } from '../../layout/edit/setUp.ts';
import { stepFindings } from '../../report/placement/stepFindings.ts';
import type { SetUpStep } from '../../report/placement/steps.ts';
import { edit } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { stageWords, stepWords } from '../words/setUpWords.ts';
import { severityVerdict } from '../words/verdictWords.ts';

interface StepListProps {
  readonly steps: readonly SetUpStep[];
  readonly at: number;
  readonly onGo: (index: number) => void;
}

const stepSigns = { stop: ', must be solved', warn: ', should be solved', note: '' } as const;

/** Every step in order: ticked here too, or brought up to be read. */
export function StepList({ steps, at, onGo }: StepListProps) {
  const { layout, report } = useOpen();
  return (
    <ol className="step-list" aria-label="All steps">
      {steps.map((step, index) => {
        const { title } = stepWords(step, layout, report);
        const isDone = layout.setUp.done.includes(step.key);
        const [worst] = stepFindings(step, report);
        const isNew = step.stage !== steps[index - 1]?.stage;
        return (
          <li key={step.key} className={index === at ? 'step-row at-hand' : 'step-row'}>
            {isNew && <h3 className="step-part">{stageWords(step.stage)}</h3>}
            <div className="step-line">
              <label className="check">
                <input
                  type="checkbox"
                  checked={isDone}
                  onChange={({ target }) =>
                    edit(target.checked ? `Done: ${title}` : `Not done: ${title}`, (from) =>
                      tickStep(from, step.key, target.checked),
                    )
                  }
                />
                <span className="spoken">Done: {title}</span>
              </label>
              <button
                type="button"
                className="quiet step-open"
                aria-current={index === at ? 'step' : undefined}
                onClick={() => onGo(index)}
              >
                {index + 1}. {title}
                {worst && (
                  <span className="step-sign">
                    <VerdictMark verdict={severityVerdict(worst.severity)} />
                    <span className="spoken">{stepSigns[worst.severity]}</span>
                  </span>
                )}
              </button>
            </div>
          </li>
        );
      })}
    </ol>
  );
}
