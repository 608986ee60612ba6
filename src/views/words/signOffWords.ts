import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { asksForChange, type SignOff } from '../../layout/signOff.ts';
import type { Finding, Report } from '../../report/report.ts';
import { isRefusedUnsaid, type SignOffCode, type SignOffState } from '../../report/signOffState.ts';
import type { LibraryRow } from '../../session/library.ts';
import { showLength } from '../../units/lengthText.ts';
import { counted, listed } from './nameOf.ts';

/** What the sentence of a finding about the sign-off is made from. */
interface SignOffSubject {
  readonly finding: Finding;
  readonly layout: Layout;
  readonly main: string;
}

interface SignOffText {
  readonly title: string;
  readonly detail: string;
  readonly next: string;
}

/** The state in a word or two; of one that was not agreed to {@link stateWords} knows more. */
export const signOffStateWords: Readonly<Record<SignOffState['kind'], string>> = {
  none: 'Not signed off',
  holds: 'Signed off',
  stale: 'Sign-off is stale',
  withheld: 'Changes asked for',
  reworked: 'Changed since: ask again',
  broken: 'Sign-off is damaged',
};

const NOT_AGREED = 'Not agreed';

/** The state as it stands on the button that opens the page: nobody who only refused is said to have asked for changes. */
export const stateWords = (state: SignOffState): string =>
  state.kind === 'withheld' && isRefusedUnsaid(state) ? NOT_AGREED : signOffStateWords[state.kind];

/**
 * The same on a row of the list of layouts, which does not know whether changes were asked for; what an older version of the app stored
 * says nothing of how it stands now.
 */
export const signedRowWords: Readonly<Record<LibraryRow['signOff'], string>> = {
  ...signOffStateWords,
  withheld: NOT_AGREED,
  unknown: 'Was signed off once: open it to see its state',
};

const signOffShortWords: Readonly<Record<SignOffState['kind'], string>> = {
  none: 'Not signed',
  holds: 'Signed',
  stale: 'Stale',
  withheld: 'Changes',
  reworked: 'Ask again',
  broken: 'Damaged',
};

/** The state in one or two words, where room is short. */
export const stateShortWords = (state: SignOffState): string =>
  state.kind === 'withheld' && isRefusedUnsaid(state) ? NOT_AGREED : signOffShortWords[state.kind];

/** Signed, and yet what must be solved is open: `Signed off, 3 to solve`. */
export const signedButOpen = (open: number): string =>
  `${signOffStateWords.holds}, ${open} to solve`;

/** The same where room is short. */
export const signedButOpenShort = (open: number): string => `Signed, ${open} open`;

/** The state with who and when, as it is written on paper: `Signed off: Drummer, 2031-05-17 18:30`. */
export function signOffHeadWords(state: SignOffState): string {
  if (state.kind === 'none') return signOffStateWords.none;
  const by = signedByWords(state.signOff);
  const refused = `${isRefusedUnsaid(state) ? 'Not agreed to' : 'Asked for changes'} by ${by}`;
  if (state.kind === 'withheld') return refused;
  if (state.kind === 'reworked') return `${refused}; kit changed since, ask again`;
  return `${signOffStateWords[state.kind]}: ${by}`;
}

/** `Drummer, 2031-05-17 18:30`: who, and when by the clock of the tablet that it was signed on. */
export function signedByWords({ name, at }: Pick<SignOff, 'name' | 'at'>): string {
  const time = new Date(at);
  const two = (value: number): string => String(value).padStart(2, '0');
  const day = `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
  return `${name}, ${day} ${two(time.getHours())}:${two(time.getMinutes())}`;
}

/** A spot is taken as it was asked for within this, mm: nobody points more exactly. */
const AS_ASKED = 10;

/** What became of a wish of the last time, told to the one who wished: `moved as you asked`; null when nothing was wished of the mic. */
export function wishKeptWords(
  mic: Id,
  layout: Layout,
  { rig }: Pick<Report, 'rig'>,
): string | null {
  const said = layout.signOffs
    .at(-1)
    ?.answers.find((answer) => answer.about === 'mic' && answer.mic === mic);
  const tip = rig.mics.find((placed) => placed.mic.id === mic)?.tip;
  if (said?.about !== 'mic' || said.answer !== 'move' || !tip) return null;
  if (!said.wish) return 'you asked for a change here';
  const off = Math.hypot(said.wish.x - tip.x, said.wish.y - tip.y);
  return off <= AS_ASKED
    ? 'moved as you asked'
    : `you asked for another spot; it is ${showLength(off, layout.units)} from that spot now`;
}

/** What is asked about besides the mics. */
export const sceneNames = { stands: 'the stands', lane: 'the way out' } as const;

/** What a sign-off shows, and what it does not. */
export const PROOF = {
  does: 'It shows that the player, the pieces and the mics here are the very ones that were on the screen when it was signed: any change of them is found.',
  doesNot:
    'It does not show who held the tablet, nor when: name and time are as typed and as the tablet’s clock ran. It is no signature in law, and no promise that nothing will be struck.',
} as const;

const noted = (note: string | undefined): string =>
  note === undefined || note === '' ? '' : ` The drummer’s note: “${note}”.`;

const noteAbout = ({ layout, finding }: SignOffSubject, about: 'mic' | 'stands' | 'lane'): string =>
  noted(
    layout.signOffs
      .at(-1)
      ?.answers.find(
        (answer) =>
          answer.about === about && (!('mic' in answer) || answer.mic === finding.about[0]),
      )?.note,
  );

const changed = ({ finding: { numbers } }: SignOffSubject): string =>
  listed([
    ...(numbers.player ? ['the player'] : []),
    ...(numbers.mics ? [counted(numbers.mics, 'mic')] : []),
    ...(numbers.pieces ? [counted(numbers.pieces, 'piece')] : []),
  ]);

const askedName = ({ layout }: SignOffSubject): string =>
  layout.signOffs.at(-1)?.name ?? 'the drummer';

/** Whether the last answer says what should change. */
const saidWhat = ({ layout }: SignOffSubject): boolean => {
  const last = layout.signOffs.at(-1);
  return last === undefined || asksForChange(last);
};

const UNSAID = 'Nothing was asked to be moved.';
const ASK_WHAT = 'Ask what should change, then ask again: about every mic, one by one.';

/** What there is to do about the sign-off, and why. */
export const signOffSentences: Readonly<
  Record<SignOffCode, (subject: SignOffSubject) => SignOffText>
> = {
  'mic-move-wished': (s) => {
    const distance = s.finding.numbers.distance;
    const far =
      distance === undefined ? '' : `, ${showLength(distance, s.layout.units)} from where it is`;
    return {
      title: `The drummer wishes ${s.main} elsewhere`,
      detail: `${distance === undefined ? 'No spot was pointed at' : `The spot is marked on the plan${far}`}.${noteAbout(s, 'mic')}`,
      next: 'Move it, then ask the drummer again: only the mics that changed are asked about.',
    };
  },
  'stands-move-wished': (s) => ({
    title: 'The drummer wants a stand moved',
    detail: `Asked about the stands, the drummer said: move it.${noteAbout(s, 'stands')}`,
    next: 'Move it, then ask the drummer again.',
  }),
  'lane-move-wished': (s) => ({
    title: 'The drummer wants the way out changed',
    detail: `Asked about the way from the throne, the drummer said: move it.${noteAbout(s, 'lane')}`,
    next: 'Clear the way, then ask the drummer again.',
  }),
  'sign-off-stale': (s) => ({
    title: 'The sign-off is stale',
    detail: `Since it was signed, ${changed(s)} changed.`,
    next: 'Ask the drummer again: only about the mics that changed.',
  }),
  'sign-off-withheld': (s) => ({
    title: `${saidWhat(s) ? 'Asked for changes' : 'Not agreed to'} by ${askedName(s)}`,
    detail: `The last time it was shown, it was not agreed to as a whole.${saidWhat(s) ? '' : ` ${UNSAID}`} It is not signed off.`,
    next: saidWhat(s) ? 'Put right what was asked for, then ask again.' : ASK_WHAT,
  }),
  'sign-off-reworked': (s) => ({
    title: `${saidWhat(s) ? 'Changes asked for' : 'Not agreed to'} by ${askedName(s)}, kit changed since: ask again`,
    detail: `${saidWhat(s) ? '' : `${UNSAID} `}Since it was shown, ${changed(s)} changed. It is not signed off.`,
    next: saidWhat(s) ? 'Ask the drummer again: only about the mics that changed.' : ASK_WHAT,
  }),
  'sign-off-broken': () => ({
    title: 'The sign-off is damaged and proves nothing',
    detail:
      'Its digest does not match its text, or the text is no kit: the file was changed outside this app, or damaged.',
    next: 'Keep the file if it matters, and have the kit signed off anew.',
  }),
};
