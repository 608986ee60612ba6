import type { Layout } from '../../../layout/layout.ts';
import type { CloseRow, Sound, TimingRow } from '../../../report/sound.ts';
import { showLength } from '../../../units/lengthText.ts';
import { nameOf } from '../../words/nameOf.ts';
import {
  changeWords,
  differenceWords,
  figure,
  hertzWords,
  levelWords,
  samplesWords,
  signedFigure,
} from '../words/amounts.ts';
import { aimWords, isolationFigure, spillWords, turnWords } from '../words/closeWords.ts';
import { harmWords, pairTitle, rangeWords, reasonWords } from '../words/pairWords.ts';
import { tryWords } from '../words/timingWords.ts';

/** Parts of the sound that can be printed. */
export type PrintedPart = 'close' | 'overheads' | 'timing' | 'pairs' | 'highPass';

/** One table on paper; each row's first cell names it. */
export interface SoundTable {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly [string, ...string[]])[];
}

/** The tables of one part, without those that have no rows. */
export function soundTables(part: PrintedPart, layout: Layout, sound: Sound): SoundTable[] {
  const tables = (() => {
    switch (part) {
      case 'close':
        return [closeTable(layout, sound.close)];
      case 'overheads':
        return overheadTables(layout, sound);
      case 'timing':
        return [timingTable(layout, sound.timing.rows), delayTable(layout, sound)];
      case 'pairs':
        return [pairTable(layout, sound)];
      case 'highPass':
        return [highPassTable(layout, sound)];
    }
  })();
  return tables.filter(({ rows }) => rows.length > 0);
}

const closeTable = (layout: Layout, close: readonly CloseRow[]): SoundTable => ({
  title: 'Close mics',
  head: ['Mic', 'Own', 'Isolation', 'Spills most', 'Aim', 'Boost, 100 Hz', 'Suggested turn'],
  rows: close.map((row) => [
    nameOf(layout, row.mic),
    `${nameOf(layout, row.source)}, ${levelWords(row.level)}`,
    isolationFigure(row),
    spillWords(row, layout),
    aimWords(row, layout.units).replace(' (common practice).', ''),
    changeWords(row.proximity),
    row.turn ? `${turnWords(row.turn, layout)}: ${changeWords(row.turn.isolation)}` : '–',
  ]),
});

function overheadTables(layout: Layout, { overheads }: Sound): SoundTable[] {
  if (!overheads) return [];
  const { mics, together, heights } = overheads;
  return [
    {
      title: 'Overheads',
      head: ['Heard', ...mics.map(({ mic }) => nameOf(layout, mic))],
      rows: [
        ...together.cymbals.map(({ piece }, i): [string, ...string[]] => [
          nameOf(layout, piece),
          ...mics.map((mic) => levelWords(mic.cymbals[i]?.level ?? Number.NaN)),
        ]),
        ['Snare', ...mics.map(({ snare }) => levelWords(snare ?? Number.NaN))],
        [
          'Loudest cymbal',
          ...mics.map(({ loudest }) => (loudest === null ? '–' : nameOf(layout, loudest))),
        ],
        ['Spread of cymbals', ...mics.map(({ spread }) => differenceWords(spread))],
        ['Over stage wash', ...mics.map(({ overWash }) => differenceWords(overWash))],
      ],
    },
    {
      title: 'Overheads by height over the highest cymbal',
      head: ['Height', 'Spread', 'Over wash', 'Snare right − left'],
      rows: heights.rows.map((row) => [
        showLength(row.height, layout.units) + (row.height === heights.enough ? ', enough' : ''),
        differenceWords(row.spread),
        differenceWords(row.overWash),
        row.balance === null ? '–' : changeWords(row.balance),
      ]),
    },
  ];
}

/** Timed pairs, the list as it is shown. */
export const timingTable = (layout: Layout, rows: readonly TimingRow[]): SoundTable => ({
  title: 'Timing and polarity, the most harmful first',
  head: [
    ...['Mics', 'Source', 'Second is later by', 'ms', '48 kHz', '96 kHz', 'Ripple'],
    ...['First nulls', 'One inverted', 'Phase', 'Try first'],
  ],
  rows: rows.map((row) => [
    `${nameOf(layout, row.first)}, ${nameOf(layout, row.second)}`,
    nameOf(layout, row.source),
    showLength(row.pathDifference, layout.units).replace('-', '−'),
    figure(row.delay.ms, 2),
    samplesWords(row.delay.samples48),
    samplesWords(row.delay.samples96),
    row.harms ? harmWords(row) : 'none heard',
    hertzList(row.nulls),
    hertzList(row.nullsInverted),
    phaseWords(row),
    tryWords(row).replace(' first', ''),
  ]),
});

/** `285, 855, 1430 Hz`. */
const hertzList = (list: readonly number[]): string =>
  list.length === 0 ? 'none' : `${list.map((hertz) => figure(hertz, 0)).join(', ')} Hz`;

const phaseWords = ({ phase, fundamental }: TimingRow): string =>
  phase === null || fundamental === null
    ? '–'
    : `${signedFigure(phase, 0)}° at ${hertzWords(fundamental)}`;

/** The delays that line mics up. */
export const delayTable = (layout: Layout, { timing }: Sound): SoundTable => ({
  title: 'Delays that line close mics up with an overhead',
  head: ['Delay', 'To meet', 'ms', '48 kHz', '96 kHz', 'Other overheads then off by up to'],
  rows: timing.alignments.map(({ mic, overhead, delay, rest }) => [
    nameOf(layout, mic),
    nameOf(layout, overhead),
    figure(delay.ms, 2),
    samplesWords(delay.samples48),
    samplesWords(delay.samples96),
    showLength(rest, layout.units),
  ]),
});

const pairTable = (layout: Layout, { pairs }: Sound): SoundTable => ({
  title: '3:1 pairs at equal gain, the most harmful first',
  head: ['Mics', 'Source', 'Near', 'Far', 'Apart', 'Ratio', 'Levels differ', 'Peak to dip'],
  rows: pairs.map((row) => [
    pairTitle(row, layout),
    nameOf(layout, row.source) + (row.shared ? ', meant' : ''),
    showLength(row.near, layout.units),
    showLength(row.far, layout.units),
    showLength(row.spacing, layout.units),
    `${figure(row.ratio, 1)}:1`,
    differenceWords(Math.abs(row.levelDifference)),
    harmWords(row),
  ]),
});

const highPassTable = (layout: Layout, { highPasses }: Sound): SoundTable => ({
  title: 'High-pass, where to start',
  head: ['Mic', 'From', 'Why'],
  rows: highPasses.map((row) => [nameOf(layout, row.mic), rangeWords(row), reasonWords(row)]),
});
