import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { ClearanceRow, Finding, FindingCode } from '../../report/report.ts';
import type { TurnAway } from '../../report/turnAway.ts';
import { showLength, showLongLength } from '../../units/lengthText.ts';
import { cableSentences } from './cableWords.ts';
import { clearanceWords } from './clearanceWords.ts';
import { feetNext } from './feetWords.ts';
import { moveAwayNext } from './moveAwayWords.ts';
import { capitalised, listed, nameOf } from './nameOf.ts';
import { patchSentences } from './patchWords.ts';
import { placeWords } from './placeWords.ts';
import { playerPlaceWords, playerSentences } from './playerFindingWords.ts';
import { signOffSentences } from './signOffWords.ts';
import { tippingText } from './standFactsWords.ts';

/** A finding for a person: what it is, what and where exactly, and what to do about it. */
export interface FindingText {
  readonly title: string;
  readonly detail: string;
  readonly next: string;
}

/** What the sentence of one finding is made from. */
interface Subject {
  readonly finding: Finding;
  readonly layout: Layout;
  /** The clearance of the mic it is about, where there is one. */
  readonly row: ClearanceRow | undefined;
  readonly turn: TurnAway | null;
  /** Names of what it is about: the main one, the second, all but the main one, and all. */
  readonly main: string;
  readonly other: string;
  readonly others: string;
  readonly all: string;
}

/**
 * The words of a finding. The numbers it may carry, each optional: `beyond`, `depth`, `overlap`, `serving` (classes of stand that reach),
 * `rise` (of a held mic over its mast's top), `folded` (by how much a boom is too long),
 * `right` and `left` (mm each hand falls short), `factor`; those of cables and patch stand with their words. Give the report's clearances, and a struck or tight mic names its move too; and the turn of its clip, where one is known.
 */
export function findingWords(
  finding: Finding,
  layout: Layout,
  clearances: readonly ClearanceRow[] = [],
  turn: TurnAway | null = null,
): FindingText {
  const [mainId, ...otherIds] = finding.about;
  const names = otherIds.map((id) => nameOf(layout, id));
  const main = mainId === undefined ? 'the layout' : nameOf(layout, mainId);
  const text = sentences[finding.code]({
    finding,
    layout,
    row: clearances.find((row) => row.mic === mainId),
    turn,
    main,
    other: names[0] ?? 'another thing',
    others: names.length > 0 ? listed(names) : 'something',
    all: listed([main, ...names]),
  });
  const where =
    playerPlaceWords(finding, layout) ?? (finding.place && placeWords(finding.place, layout));
  const place = where === undefined ? '' : ` Where: ${where}.`;
  return {
    title: capitalised(text.title),
    detail: `${capitalised(text.detail)}${place}`,
    next: text.next,
  };
}

/** A finding without its number is about at least this, mm. */
const FAR_AWAY = 3000;

/** ` by 12 mm`, or nothing where the number is not known. */
function by({ finding, layout }: Subject, name: string): string {
  const length = finding.numbers[name];
  return length === undefined ? '' : ` by ${showLength(Math.ceil(length), layout.units)}`;
}

const micOf = ({ finding, layout }: Subject): Mic | undefined =>
  layout.mics.find((mic) => mic.id === finding.about[0]);

const isClip = (subject: Subject): boolean => micOf(subject)?.mount.kind === 'clip';

/** `The right arm falls short by 37 mm and the left by 120 mm`, as far as the finding says which. */
function shortfall(subject: Subject): string {
  const hands = (['right', 'left'] as const).filter(
    (hand) => subject.finding.numbers[hand] !== undefined,
  );
  const [first, second] = hands;
  if (first === undefined) return `The arm falls short${by(subject, 'beyond')}`;
  const one = `The ${first} arm falls short${by(subject, first)}`;
  return second === undefined ? one : `${one} and the ${second}${by(subject, second)}`;
}

/** What helps where one hand of two falls short is that it does not play the piece. */
function reachNext(subject: Subject): string {
  const { right, left } = subject.finding.numbers;
  const one = right === undefined || left === undefined;
  const other = right === undefined ? 'right' : 'left';
  const piece = subject.layout.pieces.find(({ id }) => id === subject.finding.about[0]);
  const both = piece !== undefined && 'hands' in piece && piece.hands === 'both';
  const hands = one && both ? `let only the ${other} hand play it, ` : '';
  return `Bring it nearer, ${hands}or check who plays: stature, seat, trunk lean and stick.`;
}

/** What brings a mic into its stand's reach: a mic below the mast's top is not reached by lowering it further. */
function standNext({ serving, rise = 0, folded }: Finding['numbers']): string {
  if (folded !== undefined) return 'Move the base farther off, or take a shorter boom.';
  const isLow = rise < 0;
  if (serving === 0) return `${isLow ? 'Raise' : 'Lower'} the mic, or bring the base nearer.`;
  return `Bring the base nearer, or take a ${isLow ? 'lower' : 'larger'} stand.`;
}

/** What frees a mic from a stand, leg or pedal. */
function besideHardware(subject: Subject): string {
  switch (micOf(subject)?.mount.kind) {
    case 'clip':
      return 'Turn the clip round the rim to where mic and clip are free.';
    case 'stand':
      return 'Move the base or turn the boom until both stand free.';
    default:
      return 'Move the mic until both are free.';
  }
}

const moveItAway = (subject: Subject): string =>
  moveAwayNext(micOf(subject)?.mount.kind, subject.row?.nearest, subject.turn);

const detailOfMic = ({ row, layout }: Subject, fallback: string): string =>
  row ? `${clearanceWords(row, layout)}.` : fallback;

const sentences: Readonly<Record<FindingCode, (subject: Subject) => FindingText>> = {
  ...patchSentences,
  ...cableSentences,
  ...signOffSentences,
  ...playerSentences,
  'mic-struck': (s) => ({
    title: `${s.main} would be struck`,
    detail: detailOfMic(s, 'Something that moves passes through it.'),
    next: moveItAway(s),
  }),
  'mic-tight': (s) => ({
    title: `${s.main} is tight`,
    detail: detailOfMic(s, 'Something that moves passes closer than the margin.'),
    next: `${moveItAway(s)} Or agree with the player that this is enough.`,
  }),
  'mic-beyond-stand': (s) => ({
    title: `${s.main} is out of its stand's reach`,
    detail:
      s.finding.numbers.folded === undefined
        ? `The mast and boom fall short${by(s, 'beyond')}.`
        : `The boom is too long for it${by(s, 'folded')}.`,
    next: standNext(s.finding.numbers),
  }),
  'mic-far-away': (s) => ({
    title: `${s.main} is far from what it hears`,
    detail: `It stands ${showLongLength(s.finding.numbers.away ?? FAR_AWAY, s.layout.units)} from ${s.other}.`,
    next: 'Check its place: a number may be mistyped. Or choose another piece for it to hear.',
  }),
  'mic-not-close': (s) => ({
    title: `${s.main} is no close mic of ${s.other}`,
    detail: `It stands ${showLength(s.finding.numbers.away ?? 0, s.layout.units)} from the edge of ${s.other}, the only piece that it is to hear.`,
    next: `Bring it back to ${s.other}, or choose what else it is to hear.`,
  }),
  'mic-in-shell': (s) => ({
    title: `${s.main} goes into ${s.other}`,
    detail: `The mic or its mount cuts into it${by(s, 'depth')}, with nothing moving.`,
    next: 'Raise the mic, draw it back or change the angle until it stands free.',
  }),
  'boom-through-piece': (s) => ({
    title: `The ${isClip(s) ? 'clip' : 'stand'} of ${s.main} goes through ${s.other}`,
    detail: `${isClip(s) ? "The clip's arm" : 'Boom or mast'} and ${s.other} take the same space${by(s, 'depth')}, with nothing moving.`,
    next: isClip(s)
      ? 'Turn the clip round the rim to where its arm is free.'
      : 'Move the base to the other side, or set the mast higher or lower so that the boom passes free.',
  }),
  'mic-against-stand': (s) => ({
    title: `${s.main} stands against the hardware of ${s.other}`,
    detail: `The mic or its mount and a stand, leg or pedal take the same space${by(s, 'depth')}.`,
    next: besideHardware(s),
  }),
  'mic-against-mic': (s) => ({
    title: `${s.main} and ${s.other} stand against each other`,
    detail: `The two mics or their mounts take the same space${by(s, 'depth')}.`,
    next: 'Move one of the two, or turn its boom.',
  }),
  'piece-in-piece': (s) => ({
    title: `${s.main} and ${s.other} stand in each other`,
    detail: `The two take the same space${by(s, 'overlap')}.`,
    next: 'Move one of the two aside, or raise or lower it until both are free.',
  }),
  'feet-overlap': (s) => ({
    title: `Feet of ${s.main} and ${s.other} overlap`,
    detail: `Their feet take the same floor${by(s, 'overlap')}.`,
    next: feetNext(s.finding.about, s.layout),
  }),
  'base-off-deck': (s) => ({
    title: `The stand of ${s.main} is over the deck's edge`,
    detail: `A foot stands beyond the edge${by(s, 'beyond')}.`,
    next: 'Move the base in from the edge. A stand that drops off a deck can hurt someone.',
  }),
  'piece-off-deck': (s) => ({
    title: `${s.main} is over the deck's edge`,
    detail: `It stands beyond the edge${by(s, 'beyond')}.`,
    next: 'Move the kit on the deck, or take a larger deck.',
  }),
  'piece-out-of-reach': (s) => ({
    title: `${s.main} is out of the player's reach`,
    detail: `${shortfall(s)}, trunk lean included.`,
    next: reachNext(s),
  }),
  'stand-may-tip': (s) => ({
    title: `The stand of ${s.main} ${s.finding.severity === 'stop' ? 'tips over' : 'may tip'}`,
    detail: tipping(s),
    next: 'Counterweight or sandbag it, or bring the base under the mic.',
  }),
  'clip-metal-rim': (s) => ({
    title: `The metal clip of ${s.main} may mark the rim`,
    detail: `It bites on the hoop of ${s.other}.`,
    next: "Ask the drum's owner first, or take a rubber clip.",
  }),
};

function tipping({ finding }: Subject): string {
  const factor = finding.numbers.factor;
  if (factor === undefined) return 'Its boom weighs too much for its base.';
  return `Its base holds ${tippingText(factor)} times the pull of boom and mic; 1.5 is wanted.`;
}
