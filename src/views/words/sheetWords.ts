import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { KitChanges } from '../../report/compareKits.ts';
import type { Report } from '../../report/report.ts';
import { isRefusedUnsaid, type SignOffState } from '../../report/signOffState.ts';
import type { SheetWords } from '../../sheet/words.ts';
import { showMargin } from '../../units/clearanceText.ts';
import { showLengthNumber } from '../../units/lengthText.ts';
import { counted, listed, nameOf } from './nameOf.ts';
import { SET_UP_KEY } from './setUpWords.ts';
import { sheetMarks } from './sheetMarks.ts';
import {
  clearancesTable,
  findingsTable,
  measuresTable,
  micsTable,
  setUpTable,
} from './sheetTables.ts';
import { SHEET_TITLES } from './sheetTitles.ts';
import { PROOF, signOffHeadWords, signOffStateWords } from './signOffWords.ts';
import { tallyWords } from './verdictWords.ts';

/** What a print is trusted by. */
const BAR = 'Print at 100 % and check the bar.';
const CAUTION =
  'A plan, not a safety approval. Counterweight or sandbag stands that can tip; cover or ramp cables that cross a way; keep signal apart from mains, which only qualified people work on; lift with enough hands. Loud kits harm hearing. Local rules and qualified people decide.';

/** Everything that the sheets of a layout say. `paperName` is the paper that the scale holds for. */
export function sheetWords(layout: Layout, report: Report, paperName: string): SheetWords {
  const { name, venue, player, units } = layout;
  const heights = `Numbers after names are heights above the deck in ${units}.`;
  const marks = sheetMarks(layout);
  const source = { layout, report, marks };
  return {
    layoutName: name,
    about: [venue.name, venue.date ?? '', `player: ${player.name}`]
      .filter((t) => t !== '')
      .join(', '),
    titles: SHEET_TITLES,
    page: (number, of) => (of > 1 ? `Page ${number} of ${of}` : `One page, ${paperName}`),
    scale: (scale) => `1:${scale} on ${paperName}`,
    forms: {
      of: (id) => labelForms(layout, marks, id),
      standOf: (id) => [`${marks.get(id) ?? ''} stand`, marks.get(id) ?? ''],
    },
    sides: {
      audience: 'AUDIENCE',
      rulers: `Rulers: from the left and the back edge as the player sees them, ${units}`,
      front: 'From the audience',
      behind: 'From behind the player',
      side: "From the player's right, audience at the right",
    },
    legends: {
      plan: `${heights} + middle of a stand or throne; - - cable; a dark body is a mic. ${BAR}`,
      elevations: `${heights} A dark body is a mic. ${BAR}`,
    },
    measures: measuresTable(source),
    mics: micsTable(source),
    clearances: clearancesTable(source),
    findings: findingsTable(source),
    setUp: setUpTable(source),
    check: checkTexts(layout, report),
    howToMeasure: `${SET_UP_KEY} From the throne and the kick: straight, from the marks under the throne’s middle and the first kick’s front head. In ${units}; below 0: outside the edge.`,
    caution: CAUTION,
  };
}

function labelForms(layout: Layout, marks: ReadonlyMap<Id, string>, id: Id): readonly string[] {
  const mark = marks.get(id) ?? '';
  if (id === 'box') return [mark];
  const height = heightOf(layout, id);
  const number = height === null ? '' : ` ${showLengthNumber(height, layout.units)}`;
  return [`${mark} ${nameOf(layout, id)}${number}`, `${mark}${number}`, mark];
}

function heightOf(layout: Layout, id: Id): number | null {
  const mic = layout.mics.find((each) => each.id === id);
  if (mic) return mic.mount.kind === 'stand' ? mic.mount.tip.z : null;
  const piece = layout.pieces.find((each) => each.id === id);
  if (piece?.kind === 'throne') return layout.player.seatHeight;
  return piece && 'tilt' in piece ? piece.z : null;
}

function checkTexts(layout: Layout, report: Report): SheetWords['check'] {
  const { clearances, signOff } = report;
  return {
    clearances: 'Clearances',
    tally: `${counted(clearances.length, 'mic')}: ${tallyWords(report)}. Margin ${showMargin(layout)}. Computed from a model of the player's moves: the player has the last word.`,
    findings: 'Other findings',
    noFindings: 'None.',
    signOff: sheetHead(signOff),
    signOffLines: signOffLines(signOff),
    blanks: signOff.kind === 'holds' ? [] : ['Name of the player', 'Date and time', 'Signature'],
  };
}

/** Only what was agreed to is called a sign-off. */
const sheetHead = (state: SignOffState): string => {
  const refused = `Not signed off: ${isRefusedUnsaid(state) ? 'not agreed' : 'changes asked for'}`;
  if (state.kind === 'withheld') return refused;
  if (state.kind === 'reworked') return `${refused}, kit changed since, ask again`;
  return `Sign-off: ${signOffStateWords[state.kind]}`;
};

/** Digits of a digest that are enough to compare by eye. */
const DIGITS = 12;

function signOffLines(state: SignOffState): readonly string[] {
  if (state.kind === 'none') return ['The player has not signed on the screen.'];
  const { digest } = state.signOff;
  return [
    `${signOffHeadWords(state)}, by the tablet's clock. Digest ${digest.slice(0, DIGITS)}: the first ${DIGITS} digits of the SHA-256 of player, pieces and mics as they were shown.`,
    stateLine(state),
    PROOF.doesNot,
  ];
}

function stateLine(state: Exclude<SignOffState, { readonly kind: 'none' }>): string {
  switch (state.kind) {
    case 'broken':
      return 'DAMAGED: the digest is not that of what was stored. It proves nothing; ask the player again.';
    case 'stale':
      return `STALE: changed since it was signed: ${changedThings(state.changes)}. Ask the player again.`;
    case 'reworked':
      return `NOT SIGNED OFF: the player ${refusedWords(state)}; changed since: ${changedThings(state.changes)}. Ask the player again.`;
    case 'holds':
      return `Holds: agreed to the whole, and player, pieces and mics are as they were shown.${wishLine(state.wishes.length)}`;
    case 'withheld':
      return `NOT SIGNED OFF: the player ${refusedWords(state)}; player, pieces and mics are still as they were shown.${wishLine(state.wishes.length)}`;
  }
}

const refusedWords = (state: SignOffState): string =>
  isRefusedUnsaid(state) ? 'did not agree, and asked for no change' : 'asked for changes';

const changedThings = ({ player, pieces, mics }: KitChanges): string =>
  listed([
    ...(player.length > 0 ? ['the player'] : []),
    ...(mics.length > 0 ? [counted(mics.length, 'mic')] : []),
    ...(pieces.length > 0 ? [counted(pieces.length, 'piece')] : []),
  ]);

const wishLine = (wishes: number): string =>
  wishes === 0 ? '' : ` ${counted(wishes, 'mic')} wished elsewhere.`;
