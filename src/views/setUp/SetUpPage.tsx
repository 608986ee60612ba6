import { useContext, useMemo, useState } from 'react';
import { type SetUpStep, setUpSteps } from '../../report/placement/steps.ts';
import { select } from '../../session/session.ts';
import { DrawingContext } from '../pages/DrawingContext.ts';
import { useOpen } from '../parts/useOpen.ts';
import { sheetMarks } from '../words/sheetMarks.ts';
import { SetUpHead } from './SetUpHead.tsx';
import { StepCard } from './StepCard.tsx';
import { StepList } from './StepList.tsx';

/** Places the whole kit from its measures, one step at a time; the plan shows the thing at hand. */
export function SetUpPage() {
  const { layout, report } = useOpen();
  const drawing = useContext(DrawingContext);
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
    if (!next) return;
    setWanted(next.key);
    select(selectionOf(next));
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
      <div className="set-up-plan">{drawing}</div>
      <StepList steps={steps} at={at} onGo={goTo} />
    </div>
  );
}

function selectionOf({ subject }: SetUpStep) {
  switch (subject.kind) {
    case 'piece':
      return { kind: 'piece', id: subject.piece.id } as const;
    case 'mic':
    case 'run':
      return { kind: 'mic', id: subject.mic.id } as const;
    case 'box':
      return { kind: 'box' } as const;
    default:
      return null;
  }
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
