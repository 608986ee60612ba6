import type { SignOffState } from '../../report/signOffState.ts';
import { showPage } from '../../session/session.ts';
import { countByNeed } from '../panel/worstFirst.ts';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { useOpenPart } from '../parts/useOpen.ts';
import {
  signedButOpen,
  signedButOpenShort,
  stateShortWords,
  stateWords,
} from '../words/signOffWords.ts';

const icons: Readonly<Record<SignOffState['kind'], IconName>> = {
  none: 'ask',
  holds: 'check',
  stale: 'alert',
  withheld: 'alert',
  reworked: 'alert',
  broken: 'alert',
};

/**
 * Whether the drummer's sign-off holds; a tap turns the tablet to the drummer. One that holds, while things can't stay as they stand, is not shown as if
 * all were well: the deck is not signed, and the kit can be over its edge.
 */
export function SignOffButton() {
  const kind = useOpenPart(({ report }) => report.signOff.kind);
  const state = useOpenPart(({ report }) => stateWords(report.signOff));
  const short = useOpenPart(({ report }) => stateShortWords(report.signOff));
  const open = useOpenPart(({ report }) =>
    report.signOff.kind === 'holds' ? countByNeed(report).solve : 0,
  );
  const isOpen = open > 0;
  const words = isOpen ? signedButOpen(open) : state;
  return (
    <button
      type="button"
      className="sign-off-button"
      aria-label={words}
      data-sign-off={isOpen ? 'open' : kind}
      data-short={isOpen ? signedButOpenShort(open) : short}
      onClick={() => showPage('sign-off')}
    >
      <Icon name={isOpen ? 'alert' : icons[kind]} />
      <span className="sign-text">{words}</span>
    </button>
  );
}
