import type { Scene } from '../../../report/sceneFindings.ts';
import { useSigning } from '../../../session/signing.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { VerdictMark } from '../../parts/VerdictMark.tsx';
import { sceneWarnings, type Warning } from '../../words/sceneWarnings.ts';
import { signWarnings } from '../../words/signWarnings.ts';

/** What is wrong with the mics that are asked about, with all that stands there and with the way out. */
export function useSignWarnings() {
  const { layout, report } = useOpen();
  return signWarnings(useSigning().asked, report, layout);
}

/** The same, line by line: before the first question, and again before anyone agrees. */
export function SignWarnings() {
  return <WarningLines warnings={useSignWarnings()} />;
}

/** What is open about what a question is about. */
export function SceneWarnings({ scene }: { readonly scene: Scene }) {
  const { layout, report } = useOpen();
  return <WarningLines warnings={sceneWarnings(scene, report, layout)} />;
}

function WarningLines({ warnings }: { readonly warnings: readonly Warning[] }) {
  return warnings.map(({ verdict, text }) => (
    <p key={text} className="sign-verdict">
      <VerdictMark verdict={verdict} />
      <strong>{text}</strong>
    </p>
  ));
}
