import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Throne } from '../../layout/pieces/throne.ts';
import { type Spot, spotOfBox, spotsOfMic, spotsOfPiece } from '../../report/placement/spots.ts';
import type { SetUpStep, Stage } from '../../report/placement/steps.ts';
import type { Report } from '../../report/report.ts';
import { clockText } from '../../units/clock.ts';
import { showLength, showLongLength } from '../../units/lengthText.ts';
import { mountWords } from './kindWords.ts';
import { capitalised, counted, nameOf } from './nameOf.ts';
import {
  checkWords,
  edgeWords,
  micSetting,
  pieceFeet,
  pieceSetting,
  pointWords,
} from './placementWords.ts';
import { inputWords, servedWords } from './runWords.ts';
import { SHEET_TITLES } from './sheetTitles.ts';

const stages: Readonly<Record<Stage, string>> = {
  marks: 'Deck and throne',
  kick: 'Kick and pedals',
  drums: 'Drums',
  cymbals: 'Hi-hat, cymbals, percussion',
  stands: 'Mic stands',
  clips: 'Mics on clips and plates',
  cables: 'Box and cables',
  check: 'Check',
};

export const stageWords = (stage: Stage): string => stages[stage];

/** One step for a person to do. */
export interface StepText {
  readonly title: string;
  /** What to measure, set and turn, a line each. */
  readonly lines: readonly string[];
  /** What of it is measured from edges and marks; on paper these numbers have columns of their own. */
  readonly spots: readonly Spot[];
  /** What is set and turned, without what `spots` say. */
  readonly settings: readonly string[];
}

/** How directions and edges are meant, once for the whole list. */
export const SET_UP_KEY =
  'Left, right and back as the player sees them; measure square from the edges. Directions are those of a clock lying on the deck: 12 toward the audience, 3 to the player’s right.';

/** A step in words and measures. */
export function stepWords(step: SetUpStep, layout: Layout, report: Report): StepText {
  const { subject } = step;
  switch (subject.kind) {
    case 'deck':
      return deckStep(layout);
    case 'piece': {
      const { piece } = subject;
      if (piece.kind === 'throne') return throneStep(piece, layout);
      const spots = spotsOfPiece(piece, layout);
      const isHeld = 'support' in piece && piece.support.kind === 'held';
      return placed(
        piece.name,
        spots,
        spots.flatMap((spot) => spotLines(spot, layout, spots.length > 1 || isHeld)),
        [pieceSetting(piece, layout), pieceFeet(piece, layout)],
      );
    }
    case 'mic': {
      const { mic } = subject;
      const spots = spotsOfMic(mic, layout);
      return placed(
        `${nameOf(layout, mic.id)}: ${mountWords(mic.mount).toLowerCase()}`,
        spots,
        spots.flatMap((spot) => spotLines(spot, layout, spots.length > 1)),
        [...micSetting(mic, layout, report), tipWords(mic, report)],
      );
    }
    case 'box':
      return boxStep(layout);
    case 'run': {
      const run = report.runs.find(({ mic }) => mic === subject.mic.id);
      return toDo(
        `${run ? inputWords(run.input) : 'Cable'}: ${nameOf(layout, subject.mic.id)}`,
        run ? [`${showLongLength(run.total, layout.units)} to lay`, servedWords(run, layout)] : [],
      );
    }
    case 'check':
      return checkStep(report);
  }
}

function deckStep({ deck, units }: Layout): StepText {
  const size = `${showLength(deck.width, units)} wide, ${showLength(deck.depth, units)} deep`;
  const flat = deck.height === 0;
  return toDo(flat ? 'Mark the area and lay the rug' : 'Check the deck and lay the rug', [
    flat ? size : `${size}, ${showLength(deck.height, units)} high`,
    'mark the middle of the back and of the front edge',
    ...deck.stairs.map((each) => `stairs at the ${each.edge} edge: keep the way to them free`),
    flat ? '' : 'qualified people build and lock the deck; lift with enough hands',
  ]);
}

/** The throne is marked before there is anything else to measure from. */
function throneStep(throne: Throne, layout: Layout): StepText {
  const spots = spotsOfPiece(throne, layout);
  const setting = [pieceSetting(throne, layout), pieceFeet(throne, layout)];
  return {
    ...placed(
      throne.name,
      spots,
      spots.map((spot) => `mark its middle: ${edgeWords(spot, layout)}`),
      setting,
    ),
    settings: lines(['mark its middle', ...setting]),
  };
}

/** What to do about a mic's stand that can tip; empty for one that is firm. */
export const tipWords = (mic: Mic, { findings }: Pick<Report, 'findings'>): string =>
  findings.some(({ code, about }) => code === 'stand-may-tip' && about.includes(mic.id))
    ? 'counterweight or sandbag it before the boom goes out: it can tip'
    : '';

function boxStep(layout: Layout): StepText {
  const { box, units } = layout;
  const spot = spotOfBox(layout);
  return placed('Drum sub-box', [spot], spotLines(spot, layout, false), [
    `inputs face ${clockText(box.turn)}`,
    `${showLongLength(box.tail, units)} multicore to the stage box`,
  ]);
}

function checkStep({ findings }: Report): StepText {
  const open = findings.filter(({ severity }) => severity !== 'note').length;
  return toDo('Walk round it', [
    'sit down, play slowly round the kit, watch every mic',
    'cover or ramp every cable that crosses a way; keep signal away from mains',
    'push every tall stand gently: what rocks gets a sandbag or a counterweight',
    open > 0
      ? `${counted(open, 'finding')} open in this plan: see the sheet “${SHEET_TITLES.check}”`
      : '',
  ]);
}

/** A step about what stands in a place: how the place is said, then how the thing is set. */
const placed = (
  title: string,
  spots: readonly Spot[],
  measured: readonly string[],
  settings: readonly string[],
): StepText => ({
  title,
  spots,
  lines: lines([...measured, ...settings]),
  settings: lines(settings),
});

/** A step that measures nothing from an edge. */
const toDo = (title: string, settings: readonly string[]): StepText =>
  placed(title, [], [], settings);

function spotLines(spot: Spot, layout: Layout, named: boolean): readonly string[] {
  const what = named ? `${pointWords(spot.point)}: ` : '';
  const check = checkWords(spot, layout);
  return [`${what}${edgeWords(spot, layout)}`, check === '' ? '' : `check: ${check}`];
}

const lines = (all: readonly string[]): readonly string[] =>
  all.filter((each) => each !== '').map(capitalised);
