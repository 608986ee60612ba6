import { sceneFindings } from '../../../report/sceneFindings.ts';
import { showPage } from '../../../session/session.ts';
import { Icon } from '../../parts/Icon.tsx';
import { useArrival } from '../../parts/useArrival.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { listed } from '../../words/nameOf.ts';
import { PROOF, sceneNames, signedByWords } from '../../words/signOffWords.ts';
import { SceneWarnings } from './SignWarnings.tsx';

/** A sign-off that holds: by whom, when, and what it proves and what not. */
export function Signed({ onAgain }: { readonly onAgain: () => void }) {
  const { report } = useOpen();
  const { signOff } = report;
  const heading = useArrival();
  const { stands, lane } = sceneFindings(report);
  const isOpen = stands.length + lane.length > 0;
  if (signOff.kind !== 'holds') return null;
  const { digest, answers } = signOff.signOff;
  const open = answers
    .filter(({ answer }) => answer === 'move')
    .map((answer) => ('name' in answer ? answer.name : sceneNames[answer.about]));
  return (
    <>
      <h2 ref={heading} tabIndex={-1} className="signed-head">
        <Icon name="check" /> Signed off
      </h2>
      <p role="status">{signedByWords(signOff.signOff)}, by this tablet’s clock.</p>
      {open.length > 0 && (
        <p>Agreed to, with a change still wished for: {listed(open)}. It stands in the findings.</p>
      )}
      {isOpen && <p>Open in the plan as it is now:</p>}
      <SceneWarnings scene="stands" />
      <SceneWarnings scene="lane" />
      <h3>What it shows</h3>
      <p>{PROOF.does}</p>
      <h3>What it does not</h3>
      <p>{PROOF.doesNot}</p>
      <p>
        It stays good when the box, cables, inputs or names change. When a mic, a piece or the
        player changes it is stale, and the next time only what changed is asked about.
      </p>
      <details>
        <summary>Digest</summary>
        <p>SHA-256 of the RFC 8785 form of player, pieces and mics:</p>
        <p className="digest">{digest}</p>
      </details>
      <div className="buttons">
        <button type="button" className="primary" onClick={() => showPage(null)}>
          Back to the plan
        </button>
        <button type="button" onClick={onAgain}>
          Ask about everything again
        </button>
      </div>
    </>
  );
}
