import { useSigning } from '../../../session/signing.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { VerdictMark } from '../../parts/VerdictMark.tsx';
import { signWarnings } from '../../words/signWarnings.ts';

/** What is wrong with the mics that are asked about. */
export function useSignWarnings() {
  const { layout, report } = useOpen();
  return signWarnings(useSigning().asked, report, layout);
}

/** The same, line by line: before the first question, and again before anyone agrees. */
export function SignWarnings() {
  return useSignWarnings().map(({ verdict, text }) => (
    <p key={text} className="sign-verdict">
      <VerdictMark verdict={verdict} />
      <strong>{text}</strong>
    </p>
  ));
}
