import { useEffect, useState } from 'react';
import { type Remedy, remedyOf, takeRemedy } from '../../report/remedy.ts';
import type { Finding } from '../../report/report.ts';
import { edit, useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { nameOf } from '../words/nameOf.ts';
import { noRemedyWords, remedyWords } from '../words/remedyWords.ts';

/** The one change that ends a finding, where there is one: a tap takes it. */
export function RemedyOffer({ finding }: { readonly finding: Finding }) {
  const { layout } = useOpen();
  const remedy = useRemedy(finding);
  const none = noRemedyWords[finding.code];
  if (none === undefined || remedy === undefined) return null;
  if (remedy === null) return <p className="soft">{none}</p>;
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
