import type { Id } from '../layout/fields.ts';
import type { InputCode, PatchFact, PatchReason } from './fact.ts';
import type { InputRow } from './inputList.ts';

type Fact = PatchFact<InputCode>;

/** What is wrong with an input list: rules I1 to I7 (see {@link InputCode}), mics in the order of the list. */
export function inputFacts(rows: readonly InputRow[]): readonly Fact[] {
  const firstRows = rows.filter(
    (row, index) => rows.findIndex(({ mic }) => mic === row.mic) === index,
  );
  return [
    ...firstRows.flatMap((row) => [...phantomFacts(row), ...unplugged(row)]),
    ...channelsOnOneInput(firstRows, rows),
    ...micsOnOneInput(firstRows),
    ...rowsOnOneChannel(rows),
  ];
}

/** A mic behind a split gets its missing 48 V said by the split's facts, which know why. */
function phantomFacts({ mic, micClass, supplies, split }: InputRow): readonly Fact[] {
  const fact = (code: InputCode, reasons: readonly PatchReason[]): readonly Fact[] => [
    { code, reasons, ids: [mic], numbers: {} },
  ];
  if (micClass.phantom) {
    return supplies === 0 && split === null ? fact('phantom-missing', ['needsSupply']) : [];
  }
  if (supplies === 0) return [];
  return micClass.type === 'ribbon'
    ? fact('ribbon-with-phantom', ['faultyCable', 'patchBay'])
    : fact('phantom-not-needed', ['noNeed']);
}

const unplugged = ({ mic, input }: InputRow): readonly Fact[] =>
  input === null ? [{ code: 'run-unplugged', reasons: ['notHeard'], ids: [mic], numbers: {} }] : [];

const channelsOnOneInput = (
  firstRows: readonly InputRow[],
  rows: readonly InputRow[],
): readonly Fact[] =>
  firstRows.flatMap(({ mic, input }): readonly Fact[] => {
    const channels = rows.filter((row) => row.mic === mic).length;
    if (channels < 2 || input === null) return [];
    const numbers = { input, channels };
    return [{ code: 'input-two-channels', reasons: ['levelsTied'], ids: [mic], numbers }];
  });

const micsOnOneInput = (firstRows: readonly InputRow[]): readonly Fact[] =>
  shared(firstRows, ({ input }) => input).map(([input, ids]) => ({
    code: 'input-twice',
    reasons: ['signalsMix'],
    ids,
    numbers: { input },
  }));

const rowsOnOneChannel = (rows: readonly InputRow[]): readonly Fact[] =>
  shared(rows, ({ channel }) => channel).map(([channel, ids]) => ({
    code: 'channel-twice',
    reasons: ['oneHeardAtATime'],
    ids: [...new Set(ids)],
    numbers: { channel },
  }));

/** The numbers that more than one row has, in the order in which they first occur, with the mics of those rows. */
function shared(
  rows: readonly InputRow[],
  numberOf: (row: InputRow) => number | null,
): readonly (readonly [number, readonly Id[]])[] {
  const mics = new Map<number, Id[]>();
  for (const row of rows) {
    const number = numberOf(row);
    if (number !== null) mics.set(number, [...(mics.get(number) ?? []), row.mic]);
  }
  return [...mics].filter(([, ids]) => ids.length > 1);
}
