import { useEffect, useState } from 'react';
import { type Remedy, remedyOf, takeRemedy } from '../../report/remedy.ts';
import type { Finding } from '../../report/report.ts';
import { edit, useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { nameOf } from '../words/nameOf.ts';
import { nextLines, remedyWords } from '../words/remedyWords.ts';

interface NextStepProps {
  readonly finding: Finding;
  /** What its words say to do. */
  readonly next: string;
}

/** What to do about a finding, with the one change that ends it where there is one: a tap takes it. */
export function NextStep({ finding, next }: NextStepProps) {
  const remedy = useRemedy(finding);
  return (
    <>
      {nextLines(finding.code, next, remedy).map((line, i) => (
        <p key={line} className={i === 0 ? 'next' : 'soft'}>
          {line}
        </p>
      ))}
      {remedy && <Offer remedy={remedy} />}
    </>
  );
}

function Offer({ remedy }: { readonly remedy: Remedy }) {
  const { layout } = useOpen();
  const about = remedy.kind === 'turn' ? remedy.feet.id : remedy.mic;
  const step = `${stepNames[remedy.kind]} ${nameOf(layout, about)}`;
  return (
    <div className="buttons">
      <button
        type="button"
        className="primary"
        onClick={() => edit(step, (from) => takeRemedy(from, remedy))}
      >
        {remedyWords(remedy, layout)}
      </button>
    </div>
  );
}

const stepNames = {
  turn: 'Feet of',
  stand: 'Stand of',
  base: 'Base of',
  wish: 'As wished:',
} as const;

/** Looked for once nothing is being dragged: it is too much work for every frame. Undefined until it was looked for. */
function useRemedy(finding: Finding): Remedy | null | undefined {
  const { layout, report } = useOpen();
  const isStill = useSession((state) => state.gesture === null);
  const [remedy, setRemedy] = useState<Remedy | null | undefined>(undefined);
  useEffect(() => {
    if (isStill) setRemedy(remedyOf(finding, layout, report));
  }, [isStill, finding, layout, report]);
  return remedy;
}
