import { goTo, sayAllFine, stepBeside, useSigning } from '../../../session/signing.ts';
import { Icon } from '../../parts/Icon.tsx';
import { useOpen } from '../../parts/useOpen.ts';
import { StaleList } from '../../signOff/StaleList.tsx';
import { capitalised, counted, nameOf } from '../../words/nameOf.ts';
import { signedByWords, wishKeptWords } from '../../words/signOffWords.ts';
import { SignWarnings, useSignWarnings } from './SignWarnings.tsx';

/** What will be asked, and the short way for someone who has seen enough. */
export function AskStart() {
  const { layout, report } = useOpen();
  const asking = useSigning();
  const { signOff } = report;
  const looksFirst = useSignWarnings().length > 0;
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
      <WishesKept />
      <SignWarnings />
      <p>
        You see the kit from your seat.{' '}
        {asking.asked.length > 0
          ? `Look at ${mics} one by one, then the stands and the way out;`
          : 'No mic is to be looked at. Look at the stands and the way out;'}{' '}
        or say at once that all is fine.
      </p>
      <div className="sign-answers">
        {looksFirst && <OneByOne leads />}
        <button
          type="button"
          className={looksFirst ? 'sign-answer' : 'sign-answer primary'}
          onClick={sayAllFine}
        >
          <Icon name="check" /> All fine
        </button>
        {!looksFirst && <OneByOne leads={false} />}
      </div>
    </>
  );
}

function OneByOne({ leads }: { readonly leads: boolean }) {
  const asking = useSigning();
  return (
    <button
      type="button"
      className={leads ? 'sign-answer primary' : 'sign-answer'}
      onClick={() => goTo(stepBeside(asking, 1))}
    >
      <Icon name="forward" /> One by one
    </button>
  );
}

/** Which of the mics that are asked about were wished elsewhere the last time, and what became of it. */
function WishesKept() {
  const { layout, report } = useOpen();
  const { asked } = useSigning();
  const lines = asked.flatMap((mic) => {
    const kept = wishKeptWords(mic, layout, report);
    return kept === null ? [] : [`${capitalised(nameOf(layout, mic))}: ${kept}`];
  });
  if (lines.length === 0) return null;
  return (
    <ul className="stale-list">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
