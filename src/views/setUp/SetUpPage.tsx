import { useMemo, useState } from 'react';
import { type SetUpStep, setUpSteps } from '../../report/placement/steps.ts';
import { useOpen } from '../parts/useOpen.ts';
import { stepWords } from '../words/setUpWords.ts';
import { sheetMarks } from '../words/sheetMarks.ts';
import { SetUpHead } from './SetUpHead.tsx';
import { StepCard } from './StepCard.tsx';
import { StepList } from './StepList.tsx';
import { StepPicture } from './StepPicture.tsx';

/** Places the whole kit from its measures, one step at a time; a picture shows where the thing at hand goes. */
export function SetUpPage() {
  const { layout, report } = useOpen();
  const steps = useMemo(
    () => setUpSteps({ pieces: layout.pieces, mics: layout.mics }, report.runs),
    [layout.pieces, layout.mics, report.runs],
  );
  const marks = useMemo(() => sheetMarks(layout), [layout]);
  const { done } = layout.setUp;
  const firstOpen = steps.findIndex(({ key }) => !done.includes(key));
  const [wanted, setWanted] = useState<string | null>(null);
  const found = steps.findIndex(({ key }) => key === wanted);
  const at = found >= 0 ? found : Math.max(0, firstOpen);
  const step = steps[at];
  const goTo = (index: number): void => {
    const next = steps[Math.min(steps.length - 1, Math.max(0, index))];
    if (next) setWanted(next.key);
  };
  if (!step) return null;
  return (
    <div className="set-up">
      <SetUpHead steps={steps} onReset={() => goTo(0)} />
      <StepCard
        step={step}
        mark={markOf(step, marks)}
        place={{ at, of: steps.length }}
        onGo={goTo}
      />
      <StepPicture step={step} title={stepWords(step, layout, report).title} />
      <StepList steps={steps} at={at} onGo={goTo} />
    </div>
  );
}

function markOf({ subject }: SetUpStep, marks: ReadonlyMap<string, string>): string {
  switch (subject.kind) {
    case 'piece':
      return marks.get(subject.piece.id) ?? '';
    case 'mic':
    case 'run':
      return marks.get(subject.mic.id) ?? '';
    default:
      return '';
  }
}
