import type { SignOffState } from '../../report/signOffState.ts';
import { showPage } from '../../session/session.ts';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { useOpenPart } from '../parts/useOpen.ts';
import { signOffShortWords, signOffStateWords } from '../words/signOffWords.ts';

const icons: Readonly<Record<SignOffState['kind'], IconName>> = {
  none: 'ask',
  holds: 'check',
  stale: 'alert',
  withheld: 'alert',
  reworked: 'alert',
  broken: 'alert',
};

/** Whether the drummer's sign-off holds; a tap turns the tablet to the drummer. */
export function SignOffButton() {
  const kind = useOpenPart(({ report }) => report.signOff.kind);
  return (
    <button
      type="button"
      className="sign-off-button"
      aria-label={signOffStateWords[kind]}
      data-sign-off={kind}
      data-short={signOffShortWords[kind]}
      onClick={() => showPage('sign-off')}
    >
      <Icon name={icons[kind]} />
      <span className="sign-text">{signOffStateWords[kind]}</span>
    </button>
  );
}
