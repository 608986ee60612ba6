import { goTo, sayAllFine, stepBeside, useSigning } from '../../../session/signing.ts';
import { Icon } from '../../parts/Icon.tsx';
import { useOpen } from '../../parts/useOpen.ts';
import { StaleList } from '../../signOff/StaleList.tsx';
import { counted } from '../../words/nameOf.ts';
import { signedByWords } from '../../words/signOffWords.ts';

/** What will be asked, and the short way for someone who has seen enough. */
export function AskStart() {
  const { layout, report } = useOpen();
  const asking = useSigning();
  const { signOff } = report;
  const mics = counted(asking.asked.length, 'mic');
  return (
    <>
      <h2>{layout.player.name}, is this all right for you?</h2>
      {(signOff.kind === 'stale' || signOff.kind === 'reworked') && (
        <div>
          <p>Since {signedByWords(signOff.signOff)} this changed:</p>
          <StaleList />
        </div>
      )}
      {signOff.kind === 'broken' && (
        <p className="field-problem" role="alert">
          The last sign-off is damaged: its digest does not match its text. It proves nothing, so
          everything is asked again. It is kept in the file.
        </p>
      )}
      <p>
        You see the kit from your seat. Look at {mics} one by one, then the stands and the way out;
        or say at once that all is fine.
      </p>
      <div className="sign-answers">
        <button type="button" className="sign-answer primary" onClick={sayAllFine}>
          <Icon name="check" /> All fine
        </button>
        <button type="button" className="sign-answer" onClick={() => goTo(stepBeside(asking, 1))}>
          <Icon name="forward" /> One by one
        </button>
      </div>
    </>
  );
}
