import type { Layout } from '../../layout/layout.ts';
import type { Finding, FindingCode } from '../../report/report.ts';
import { showCableLength, showLength, showLongLength } from '../../units/lengthText.ts';
import { counted } from './nameOf.ts';

/** What the sentence of a finding about cables or the box is made from. */
interface CableSubject {
  readonly finding: Pick<Finding, 'about' | 'numbers'>;
  readonly layout: Layout;
  /** Names of what it is about: the main one, all but the main one, and all. */
  readonly main: string;
  readonly others: string;
  readonly all: string;
}

interface CableText {
  readonly title: string;
  readonly detail: string;
  readonly next: string;
}

const number = ({ finding }: CableSubject, name: string): number => finding.numbers[name] ?? 0;
const long = (s: CableSubject, name: string): string =>
  showLongLength(number(s, name), s.layout.units);
const stock = (s: CableSubject, name: string): string =>
  showCableLength(number(s, name), s.layout.units);

/** ` by 12 mm`, or nothing where the number is not known. */
function by({ finding, layout }: CableSubject, name: string): string {
  const length = finding.numbers[name];
  return length === undefined ? '' : ` by ${showLength(Math.ceil(length), layout.units)}`;
}

const cablesOf = ({ finding, main }: CableSubject): string =>
  finding.about.length > 1 ? `${finding.about.length} cables` : `The cable of ${main}`;

/** What is wrong with a single cable. */
const runSentences = {
  'run-no-way': (s: CableSubject): CableText => ({
    title: `No free way for the cable of ${s.main}`,
    detail: `Its shortest way passes through ${s.others}.`,
    next: 'Move the box, what holds the mic or what stands in the way, or lay this cable by hand over the obstacle and cover it.',
  }),
  'run-joined': (s: CableSubject): CableText => ({
    title: `The cable of ${s.main} is joined from two`,
    detail: `It needs ${long(s, 'needed')}: ${stock(s, 'longer')} and ${stock(s, 'shorter')}, since ${whyJoined(s)}.`,
    next: 'Tape the join, keep it off the walkways, or bring one cable that is long enough.',
  }),
  'run-signal': (s: CableSubject): CableText => ({
    title: `The cable of ${s.main} is long for its signal`,
    detail: `With the multicore it is ${long(s, 'length')} long: ${losses(s)}, estimated for a usual mic cable.`,
    next: 'Shorten the multicore, or put the preamplifier at the box.',
  }),
  'run-unplugged': (s: CableSubject): CableText => ({
    title: `${s.main} is not plugged in`,
    detail: 'It has no input of the box.',
    next: 'Give it a free input.',
  }),
};

/** Why no single cable serves: none is long enough, or those that are serve longer runs (S3). */
function whyJoined(s: CableSubject): string {
  const { cabling, units } = s.layout;
  const reach = cabling.stock.filter(
    ({ length, count }) => count > 0 && length >= number(s, 'needed'),
  );
  const all = reach.reduce((sum, { count }) => sum + count, 0);
  const [only, ...more] = reach;
  if (only === undefined) return 'no cable that is carried is long enough';
  const length = showCableLength(only.length, units);
  if (all === 1) return `the only ${length} cable is taken by a longer run`;
  if (more.length === 0) {
    return `${all === 2 ? 'both' : `all ${all}`} ${length} cables are taken by longer runs`;
  }
  const each = reach.map((row) => `${row.count} × ${showCableLength(row.length, units)}`);
  return `all that are long enough (${each.join(', ')}) are taken by longer runs`;
}

/** The loss that is worth telling, or both. */
function losses(s: CableSubject): string {
  const worth = [
    { loss: number(s, 'levelLoss'), where: 'less level' },
    { loss: number(s, 'lossAt20k'), where: 'less at 20 kHz' },
  ].filter(({ loss }) => loss >= 0.5);
  return worth.map(({ loss, where }) => `${loss.toFixed(1)} dB ${where}`).join(' and ');
}

/** What is wrong with the box, its inputs and the stock. */
const boxSentences = {
  'stock-missing': (s: CableSubject): CableText => ({
    title: `${stock(s, 'length')} cables: ${number(s, 'count')} more needed`,
    detail:
      number(s, 'listed') === 0
        ? `No cables are listed as carried. For ${s.all}.`
        : `The cables carried are too short or taken. For ${s.all}.`,
    next:
      number(s, 'listed') === 0
        ? 'List the cables you carry in the Cables section, or bring these.'
        : 'Bring them, or move the box so that shorter ones serve.',
  }),
  'input-twice': (s: CableSubject): CableText => ({
    title: `Input ${s.finding.numbers.input ?? '?'} is used twice`,
    detail: `${s.all} are on the same input.`,
    next: 'Give one of them a free input.',
  }),
  'input-beyond-box': (s: CableSubject): CableText => ({
    title: `The box has no input ${s.finding.numbers.input ?? '?'}`,
    detail: `${s.main} is on an input that the box does not have${ofInputs(s)}.`,
    next: 'Give it a free input, or take a larger box.',
  }),
  'more-mics-than-inputs': (s: CableSubject): CableText => ({
    title: 'More mics than box inputs',
    detail: `${counted(s.finding.numbers.mics ?? s.layout.mics.length, 'mic')} for ${counted(s.finding.numbers.inputs ?? s.layout.box.inputs, 'input')}.`,
    next: 'Take a larger box, or leave out a mic.',
  }),
  'box-in-obstacle': (s: CableSubject): CableText => ({
    title: 'The box stands in something else',
    detail: `The box takes the same floor as ${s.all}.`,
    next: 'Move the box to a free place: the Cables section finds the best along the edges.',
  }),
  'box-off-deck': (s: CableSubject): CableText => ({
    title: 'The box stands beside the deck',
    detail: `Its cables hang over the edge of the deck${dropOf(s)}.`,
    next: 'Secure the cables at the edge, or move the box onto the deck.',
  }),
};

/** What is wrong where people walk. */
const wayOutSentences = {
  'lane-crossed': (s: CableSubject): CableText => ({
    title: `${cablesOf(s)} ${crosses(s)} the way to the stairs`,
    detail: `Someone leaving the throne steps over ${s.finding.about.length > 1 ? `the cables of ${s.all}` : 'it'}.`,
    next: 'Cover it, or move the box to another edge.',
  }),
  'stairs-crossed': (s: CableSubject): CableText => ({
    title: `${cablesOf(s)} ${crosses(s)} in front of stairs`,
    detail: `Whoever takes the stairs steps over ${s.finding.about.length > 1 ? `the cables of ${s.all}` : 'it'}.`,
    next: 'Cover it, or move the box to another edge.',
  }),
  'stairs-off-edge': (s: CableSubject): CableText => ({
    title: 'Stairs stand beyond the end of their edge',
    detail: `They reach past the corner of the deck${by(s, 'beyond')}.`,
    next: 'Move them along the edge until all of them meets the deck: a step into nothing hurts.',
  }),
  'lane-blocked': (s: CableSubject): CableText => ({
    title: `${s.finding.about.length > 0 ? s.main : 'The box'} stands in the way to the stairs`,
    detail: `The way from the throne to the nearest stairs is kept free; this reaches into it${by(s, 'overlap')}.`,
    next: 'Move it aside, or the stairs to another edge: the player must get out in the dark.',
  }),
};

const crosses = ({ finding }: CableSubject): string =>
  finding.about.length > 1 ? 'cross' : 'crosses';

function dropOf({ finding, layout }: CableSubject): string {
  const drop = finding.numbers.drop;
  return drop === undefined ? '' : `, ${showLength(drop, layout.units)} high`;
}

const ofInputs = ({ finding }: CableSubject): string =>
  finding.numbers.inputs === undefined ? '' : ` (it has ${finding.numbers.inputs})`;

/** The words of what is wrong with cables and box. */
export const cableSentences = {
  ...runSentences,
  ...boxSentences,
  ...wayOutSentences,
} satisfies { readonly [Code in FindingCode]?: (subject: CableSubject) => CableText };
