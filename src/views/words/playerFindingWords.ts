import type { Layout } from '../../layout/layout.ts';
import type { Finding, FindingCode } from '../../report/report.ts';
import { roundedDown, showLength } from '../../units/lengthText.ts';
import { counted } from './nameOf.ts';

/** What the sentence of a finding about the player at rest, or about a pedal that is played, is made from. */
interface PlayerSubject {
  readonly finding: Finding;
  readonly layout: Layout;
  readonly main: string;
  readonly other: string;
  readonly all: string;
}

interface PlayerText {
  readonly title: string;
  readonly detail: string;
  readonly next: string;
}

type Code = Extract<
  FindingCode,
  'mic-in-player' | 'mic-near-player' | 'mic-in-pedal' | 'piece-not-played'
>;

/** The parts that a finding may name by one of its numbers. */
const PARTS = ['head', 'neck', 'shoulders', 'trunk', 'foot', 'beater', 'axle'] as const;
type Part = (typeof PARTS)[number];

const partOf = ({ finding }: Pick<PlayerSubject, 'finding'>): Part | undefined =>
  PARTS.find((part) => finding.numbers[part] !== undefined);

/** As many pieces are named in a title; of more their number. */
const MOST_NAMED = 3;

/** A place farther out than this is to one side of the player's middle, mm. */
const ASIDE = 60;

/** Where it is on the player, `at the player's head, 1250 mm above the deck`; undefined for a finding that is about no part of the player. */
export function playerPlaceWords(finding: Finding, layout: Layout): string | undefined {
  const part = partOf({ finding });
  const { place, code } = finding;
  if (part === undefined || !place || code === 'mic-in-pedal') return undefined;
  const side = Math.abs(place.x) < ASIDE ? '' : ` on the ${place.x < 0 ? 'left' : 'right'}`;
  return `at the player's ${part}${side}, ${showLength(place.z, layout.units)} above the deck`;
}

/** What a mic stands in, or too near to, at the player or a pedal, in short: `in the player's head`; undefined for a finding that is about no part of these. */
export function playerPartWords(finding: Finding): string | undefined {
  const part = partOf({ finding });
  if (part === undefined) return undefined;
  if (finding.code === 'mic-near-player') return `from the player's ${part}`;
  if (part === 'beater') return "in the beater's way";
  return part === 'axle' ? "in the pedal's axle" : `in the player's ${part}`;
}

/** How far a mic is from the player at rest, never more than it is. */
export const gapWords = ({ numbers }: Finding, { units }: Pick<Layout, 'units'>): string =>
  showLength(roundedDown(numbers.gap ?? 0, units), units);

const numberOf = ({ finding, layout }: PlayerSubject, name: string): string | undefined => {
  const length = finding.numbers[name];
  return length === undefined ? undefined : showLength(Math.ceil(length), layout.units);
};

const by = (subject: PlayerSubject): string => {
  const depth = numberOf(subject, 'depth');
  return depth === undefined ? '' : ` by ${depth}`;
};

/** What a mic meets at a pedal. */
function pedalText(s: PlayerSubject): PlayerText {
  const next = 'Move the mic or its boom aside, or raise it until foot and beater are free.';
  switch (partOf(s)) {
    case 'beater':
      return {
        title: `${s.main} stands in the way of the beater of ${s.other}`,
        detail: `The beater on its way to the head or back meets the mic or its mount${by(s)}.`,
        next,
      };
    case 'axle':
      return {
        title: `${s.main} goes into ${s.other}`,
        detail: `The mic or its mount and the axle or a post of the pedal take the same space${by(s)}.`,
        next,
      };
    default:
      return {
        title: `${s.main} stands where the foot is on ${s.other}`,
        detail: `The foot at rest on the pedal and the mic or its mount take the same space${by(s)}.`,
        next,
      };
  }
}

export const playerSentences: Readonly<Record<Code, (subject: PlayerSubject) => PlayerText>> = {
  'mic-in-player': (s) => ({
    title: `${s.main} goes into the player's ${partOf(s) ?? 'body'}`,
    detail: `The player sitting upright and the mic or its mount take the same space${by(s)}.`,
    next: 'Move the mic away from the player, or take its base and boom round the other side.',
  }),
  'mic-near-player': (s) => ({
    title: `${s.main} is close to the player's ${partOf(s) ?? 'body'}`,
    detail: `The mic or its mount stands ${gapWords(s.finding, s.layout)} from the player sitting upright, and a player moves.`,
    next: 'Move it farther off, or agree with the player that this is enough.',
  }),
  'mic-in-pedal': pedalText,
  'piece-not-played': (s) => {
    const count = s.finding.about.length;
    const pieces = count > MOST_NAMED ? counted(count, 'piece') : s.all;
    const [them, these] = count === 1 ? ['it', 'this piece'] : ['them', s.all];
    return {
      title: `No hand plays ${pieces}: nothing is computed for ${them}`,
      detail: `No stroke on ${these} and no way to ${them} counts: a mic there may read clear and be struck.`,
      next: `If somebody plays ${them}, choose a hand: Player, 'Hands, piece by piece'.`,
    };
  },
};
