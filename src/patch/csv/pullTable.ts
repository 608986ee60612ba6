import { findMicClass } from '../../layout/catalogue/micClasses.ts';
import { STAND_CLASSES } from '../../layout/catalogue/standClasses.ts';
import type { Layout } from '../../layout/layout.ts';
import type { PullItem, PullKind } from '../../layout/patch.ts';
import type { LengthUnit } from '../../units/lengthText.ts';
import { isSameItem } from '../pull/pullItem.ts';
import { type PullLine, SPLIT_LEG } from '../pull/pullList.ts';
import type { StrikeLine } from '../pull/ticks.ts';
import { longNumber, longUnit } from './cellWords.ts';
import type { Table } from './toCsv.ts';

const KINDS: Readonly<Record<PullKind, string>> = {
  mic: 'Mic',
  rimClip: 'Rim clip',
  micHolder: 'Mic holder',
  stand: 'Stand',
  base: 'Base (part of a stand)',
  boom: 'Boom (part of a stand)',
  counterweight: 'Counterweight (part of a stand)',
  sandbag: 'Sandbag',
  cable: 'Mic cable',
  box: 'Drum sub-box',
  tail: 'Multicore tail',
  splitter: 'Splitter',
  yLead: 'Y lead',
  tape: 'Gaffer tape, roll',
};

/** What a kind of things is called. */
export const pullKindWords = (kind: PullKind): string => KINDS[kind];

/** The pull list with its ticks as a table; what went out and is no longer on the list stands at its end. */
export const pullTable = (
  list: readonly PullLine[],
  strike: readonly StrikeLine[],
  layout: Pick<Layout, 'ownClasses' | 'units'>,
): Table => ({
  header: ['What', 'Which', 'Needed', 'Spare', 'Total', 'Out', 'Back', 'Not back'],
  rows: strike.map((line) => {
    const { kind, total, out, back, missing } = line;
    const { needed, spare } = list.find((each) => isSameItem(each, line)) ?? NOT_LISTED;
    return [KINDS[kind], whichWords(line, layout), needed, spare, total, out, back, missing];
  }),
});

const NOT_LISTED = { needed: 0, spare: 0 };

/** One sort of thing in words: `Mic: Short dynamic`, `Mic cable: 5 m`. */
export function pullWords(item: PullItem, layout: Pick<Layout, 'ownClasses' | 'units'>): string {
  const which = whichWords(item, layout);
  return which === '' ? KINDS[item.kind] : `${KINDS[item.kind]}: ${which}`;
}

function whichWords(
  { kind, which }: PullItem,
  layout: Pick<Layout, 'ownClasses' | 'units'>,
): string {
  switch (kind) {
    case 'mic':
      return findMicClass(layout, which)?.name ?? which;
    case 'stand':
      return STAND_CLASSES.find(({ standClass }) => standClass === which)?.name ?? which;
    case 'cable':
    case 'tail':
      if (which === SPLIT_LEG) return 'for legs of splits, length by eye';
      return lengthWords(which, layout.units);
    case 'box':
      return `${which} inputs`;
    case 'splitter':
    case 'yLead':
      return `1 to ${which}`;
    default:
      return which;
  }
}

/** The length that an item carries in mm. A cable is named by its length, so small parts of a metre count. */
function lengthWords(which: string, unit: LengthUnit): string {
  const length = Number(which);
  return Number.isFinite(length) ? `${longNumber(length, unit)} ${longUnit(unit)}` : which;
}
