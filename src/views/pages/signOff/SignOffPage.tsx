import { useContext, useEffect, useState } from 'react';

import type { Id } from '../../../layout/fields.ts';
import { shownVerdict } from '../../../report/judgement.ts';
import type { Report } from '../../../report/report.ts';
import { micsToAsk } from '../../../report/signOffState.ts';
import { beginSigning, signing, startAgain, useSigning } from '../../../session/signing.ts';
import { useOpen } from '../../parts/useOpen.ts';
import type { Verdict } from '../../words/verdictWords.ts';
import { DrummerPlanContext } from '../DrummerPlanContext.ts';
import { AskAbout } from './AskAbout.tsx';
import { AskStart } from './AskStart.tsx';
import { Consent } from './Consent.tsx';
import { Signed } from './Signed.tsx';

/** The tablet is turned to the drummer: the plan from the player's seat, and one question at a time. */
export function SignOffPage() {
  const { layout, report } = useOpen();
  const plan = useContext(DrummerPlanContext);
  const { signOff } = report;
  // One that holds is shown first; it is asked about all again only when that is wanted, or was begun.
  const [again, setAgain] = useState(
    () => signOff.kind === 'holds' && signing.getState().layout === layout.id,
  );
  const holds = signOff.kind === 'holds' && !again;
  const asked = worstFirst(
    report,
    again ? layout.mics.map(({ id }) => id) : micsToAsk(layout, signOff),
  );
  const question = asked.join();
  useEffect(() => {
    if (!holds) beginSigning(layout.id, question === '' ? [] : question.split(','));
  }, [holds, layout.id, question]);
  const askAll = () => {
    startAgain(
      layout.id,
      worstFirst(
        report,
        layout.mics.map(({ id }) => id),
      ),
    );
    setAgain(true);
  };
  return (
    <div className="sign-page">
      <div className="sign-plan">{plan}</div>
      <div className="sign-side">
        {holds ? <Signed onAgain={askAll} /> : <Asking onSigned={() => setAgain(false)} />}
      </div>
    </div>
  );
}

/**
 * What would be struck now, or can't stay, is asked about in any case and first, then what is tight: nobody agrees to it without having
 * been told.
 */
function worstFirst(report: Report, asked: readonly Id[]): readonly Id[] {
  const having = (verdict: Verdict) =>
    report.clearances.filter((row) => shownVerdict(row, report) === verdict).map(({ mic }) => mic);
  const tight = new Set(having('tight'));
  return [...new Set([...having('struck'), ...asked.filter((id) => tight.has(id)), ...asked])];
}

function Asking({ onSigned }: { readonly onSigned: () => void }) {
  const { step } = useSigning();
  switch (step.at) {
    case 'start':
      return <AskStart />;
    case 'consent':
      return <Consent onSigned={onSigned} />;
    default:
      return <AskAbout />;
  }
}
