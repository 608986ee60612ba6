import { findMicClass } from '../../layout/catalogue/micClasses.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { isOfPlace, rowsWorstFirst, whyNot } from '../../report/judgement.ts';
import { type Spot, spotOfBox, spotsOfMic, spotsOfPiece } from '../../report/placement/spots.ts';
import { stepFindings } from '../../report/placement/stepFindings.ts';
import { piecesInOrder, type SetUpStep, setUpSteps } from '../../report/placement/steps.ts';
import type { Report, Severity } from '../../report/report.ts';
import type { SheetTable } from '../../sheet/paper/table.ts';
import { clearancePlace, clearanceWords, movingWords } from './clearanceWords.ts';
import { findingWords } from './findingWords.ts';
import { mountWords } from './kindWords.ts';
import { capitalised, nameOf } from './nameOf.ts';
import {
  fromKickMark,
  fromThroneMark,
  micSetting,
  pointWords,
  tableLength,
} from './placementWords.ts';
import { stageWords, stepWords, tipWords } from './setUpWords.ts';
import { figureWords, troublesOf } from './troubleWords.ts';
import { saidVerdict } from './verdictWords.ts';

/** The tables of the sheets. `marks` are the short names that the drawings use. */
export interface TableSource {
  readonly layout: Layout;
  readonly report: Report;
  readonly marks: ReadonlyMap<Id, string>;
}

/** What stands on the deck, point by point, with its measures and heights. */
export function measuresTable({ layout, marks }: TableSource): SheetTable {
  const kick = layout.pieces.some(({ kind }) => kind === 'kick');
  const row = (id: Id, name: string, spot: Spot, height: number | null): readonly string[] => {
    const { measures, point } = spot;
    const lengths = [
      measures.fromLeft,
      measures.fromBack,
      measures.fromThrone,
      ...(kick ? [measures.fromKick] : []),
      height,
    ];
    return [
      marks.get(id) ?? '',
      name,
      pointWords(point),
      ...lengths.map((length) => tableLength(length, layout)),
    ];
  };
  const pieces = piecesInOrder(layout.pieces).flatMap((piece) => {
    const spots = spotsOfPiece(piece, layout);
    const z = piece.kind === 'throne' ? layout.player.seatHeight : 'tilt' in piece ? piece.z : null;
    return spots.map((spot, i) =>
      row(piece.id, piece.name, spot, i === spots.length - 1 ? z : null),
    );
  });
  const mics = layout.mics.flatMap((mic) =>
    spotsOfMic(mic, layout).map((spot) =>
      row(
        mic.id,
        nameOf(layout, mic.id),
        spot,
        mic.mount.kind === 'stand' && spot.point === 'micFront' ? mic.mount.tip.z : null,
      ),
    ),
  );
  const lengths = ['Left', 'Back', 'Throne', ...(kick ? ['Kick'] : []), 'Height'];
  return {
    header: ['', 'What', 'Point', ...lengths],
    rows: [...pieces, ...mics, row('box', '', spotOfBox(layout), null)],
    broken: [1],
    numbers: lengths.map((_, i) => i + 3),
  };
}

/** Every mic: what it is, what holds it, what is open about it and how it is set. */
export function micsTable({ layout, report, marks }: TableSource): SheetTable {
  const rows = layout.mics.map((mic) => {
    const clearance = report.clearances.find((each) => each.mic === mic.id);
    const spots = spotsOfMic(mic, layout).map(
      ({ point, measures: { fromLeft, fromBack } }) =>
        `${pointWords(point)} left ${tableLength(fromLeft, layout)}, back ${tableLength(fromBack, layout)}`,
    );
    return [
      marks.get(mic.id) ?? '',
      mic.input === null ? '–' : String(mic.input),
      nameOf(layout, mic.id),
      findMicClass(layout, mic.micClass)?.name ?? mic.micClass,
      mountWords(mic.mount),
      [
        ...openAt({ subject: { kind: 'mic', mic } }, layout, report),
        ...[tipWords(mic, report)].filter((words) => words !== ''),
        [...spots, ...micSetting(mic, layout, report)].join('; '),
      ]
        .map(capitalised)
        .join('. '),
      clearance
        ? `${saidVerdict(clearance, report).word}, ${plain(figureWords(clearance, report, layout))}`
        : '',
    ];
  });
  return {
    header: ['', 'In', 'Mic', 'Class', 'Held by', 'How it is set', 'Clearance'],
    rows,
    broken: [2, 3, 4, 5],
    numbers: [],
  };
}

/** Every mic's clearance, the worst first, with what moves there; of one that can't stay, why, and what to do. */
export function clearancesTable({ layout, report, marks }: TableSource): SheetTable {
  const rows = rowsWorstFirst(report).map((row) => {
    const why = whyNot(row.mic, report);
    const isRoom = troublesOf(row, report).length === 0;
    const place = row.verdict === 'clear' ? undefined : clearancePlace(row, layout);
    const room = isRoom
      ? [clearanceWords(row, layout), ...(place ? [place] : [])].map(capitalised).join('. ')
      : movingWords(row, why, layout);
    const causes = why.map((finding) => {
      const { title, detail, next } = findingWords(finding, layout);
      return finding.about[0] === row.mic ? `${title}. ${detail} ${next}` : `${title}.`;
    });
    return [
      marks.get(row.mic) ?? '',
      nameOf(layout, row.mic),
      saidVerdict(row, report).word,
      (isRoom ? [room, ...causes] : [...causes, room]).join(' '),
    ];
  });
  return { header: ['', 'Mic', 'Verdict', 'Clearance'], rows, broken: [1, 3], numbers: [] };
}

const severities: Readonly<Record<Severity, string>> = {
  stop: 'Stop',
  warn: 'Warning',
  note: 'Note',
};

/** Findings that are not about a mic's place (those stand in the table of clearances), the worst first. */
export function findingsTable({ layout, report }: TableSource): SheetTable {
  const rows = report.findings
    .filter((finding) => !isOfPlace(finding))
    .map((finding) => {
      const { title, detail, next } = findingWords(finding, layout, report.clearances);
      return [severities[finding.severity], title, detail, next];
    });
  return {
    header: ['', 'Finding', 'What and where', 'What to do'],
    rows,
    broken: [1, 2, 3],
    numbers: [],
  };
}

/**
 * The steps of setting up under the names of their stages, with a box to tick; what is done on the screen is ticked. Measures stand in columns, a
 * line for each point, so that a tape finds them at a glance.
 */
export function setUpTable({ layout, report, marks }: TableSource): SheetTable {
  const kick = layout.pieces.some(({ kind }) => kind === 'kick');
  let last = '';
  const rows = setUpSteps(layout, report.runs).flatMap((step, i) => {
    const { title, spots, settings } = stepWords(step, layout, report);
    const stage = stageWords(step.stage);
    const heading = stage === last ? [] : [[stage]];
    last = stage;
    const { subject } = step;
    const id =
      subject.kind === 'piece' ? subject.piece.id : subject.kind === 'mic' ? subject.mic.id : '';
    const isDone = layout.setUp.done.includes(step.key);
    const column = (said: (spot: Spot) => string): string => spots.map(said).join('\n');
    const length = (of: (spot: Spot) => number | null): string =>
      column((spot) => tableLength(of(spot), layout));
    const row = [
      isDone ? '[x]' : '[  ]',
      String(i + 1),
      marks.get(id) ?? '',
      title,
      column(({ point }) => capitalised(pointWords(point))),
      length(({ measures }) => measures.fromLeft),
      length(({ measures }) => measures.fromBack),
      length(fromThroneMark),
      ...(kick ? [length(fromKickMark)] : []),
      [...openAt(step, layout, report), ...settings].join('. '),
    ];
    return [...heading, row];
  });
  const lengths = ['Left', 'Back', 'Throne', ...(kick ? ['Kick'] : [])];
  const set = 5 + lengths.length;
  return {
    header: ['', '', '', 'Step', 'Point', ...lengths, 'Set'],
    rows,
    broken: [3, set],
    numbers: [1, ...lengths.map((_, i) => 5 + i)],
    strong: [3],
    spread: { from: 4, to: set },
  };
}

/** What is open about a step's thing (P3). */
const openAt = (
  step: Pick<SetUpStep, 'subject'>,
  layout: Layout,
  report: Report,
): readonly string[] =>
  stepFindings(step, report).map((finding) => `OPEN: ${findingWords(finding, layout).title}`);

/** The true minus is not among the letters of every printer's font. */
const plain = (text: string): string => text.replace('−', '-');
