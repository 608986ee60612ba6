import type { MovingPart, Nearest, Verdict } from '../clearance/nearest.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Side } from '../player/hands.ts';
import type { MicPart } from '../rig/placed.ts';
import { type Judgement, judgementOf } from './judgement.ts';
import { type PatchJson, patchJson } from './patchJson.ts';
import type { FindingCode, Report, RunRow, Severity } from './report.ts';
import { type SignOffJson, signOffJson } from './signOffJson.ts';
import { type SoundJson, soundJson } from './soundJson.ts';

/**
 * The version of the report document that this program writes; raised when a reader of the last one would go wrong.
 * 2: `signOff.state` can be `reworked`, which version 1 told as `withheld`: a reader that knows the states of 1 would not know it.
 */
const REPORT_VERSION = 2;

/** A point of the kit frame, mm: x to the player's right, y to the audience, z up from the deck. */
export interface PointJson {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * The whole report of one layout as plain JSON, for other programs. Lengths are mm, rounded to 0.001. Within a version fields and codes of
 * findings are only added; a value that is new where the values are a closed list, as a verdict or a sign-off's state, raises it.
 */
export interface ReportJson {
  readonly format: 'strokespace-report';
  readonly version: typeof REPORT_VERSION;
  readonly layout: { readonly id: Id; readonly name: string; readonly margin: number };
  /** The worst verdict of all mics' clearances; `clear` when there is none. */
  readonly verdict: Verdict;
  readonly clearances: readonly ClearanceJson[];
  readonly runs: readonly RunJson[];
  readonly totals: {
    readonly cable: number;
    readonly longest: number;
    /** How much of `cable` the loom adds to the runs' own shortest ways. */
    readonly extra: number;
    /** All lines on which cables lie, each once. */
    readonly laid: number;
    /** Cables carried that the runs take, joined ones each counted. */
    readonly stock: readonly CableCountJson[];
    /** Cables that have to be brought beside those carried. */
    readonly missing: readonly CableCountJson[];
    /** Runs of two joined cables. */
    readonly joins: number;
  };
  readonly player: {
    readonly name: string;
    /** Body lengths that it was computed with, mm, by their names in the layout. */
    readonly body: Readonly<Record<string, number>>;
    readonly playedBy: readonly { readonly piece: Id; readonly hands: readonly Side[] }[];
  };
  /** Worst first. */
  readonly findings: readonly FindingJson[];
  readonly signOff: SignOffJson;
  readonly patch: PatchJson;
  readonly sound: SoundJson;
}

/** How many cables of one length. */
export interface CableCountJson {
  readonly length: number;
  readonly count: number;
}

/** One mic against everything that moves. */
export interface ClearanceJson {
  readonly mic: Id;
  readonly name: string;
  /** Of its clearance alone. */
  readonly verdict: Verdict;
  /** What is said of it (J1 to J4): `in-the-way` where it stands in something with nothing moving, `not-held` where its stand can't hold it, `near-player`, else the verdict. */
  readonly judgement: Judgement;
  /** The smallest distance to anything that moves, below 0 by the depth of the overlap; null when nothing moves. */
  readonly clearance: number | null;
  readonly nearest: NearestJson | null;
}

/** What is nearest, and where. */
export interface NearestJson {
  /** `stroke` has hand and on; `travel` has hand, from and to; `leg` has foot and pedal (null: none); `swing` has cymbal. */
  readonly movement: Nearest['movement'];
  readonly part: MovingPart;
  readonly micPart: MicPart;
  readonly onMic: PointJson;
  readonly onMoving: PointJson;
}

/** One cable. */
export interface RunJson {
  readonly mic: Id;
  readonly name: string;
  /** Numbered input of the box; null: not plugged. */
  readonly input: number | null;
  readonly total: number;
  /** Its length on its own shortest way, and what the loom adds to that. */
  readonly shortest: number;
  readonly extra: number;
  /** The one stock cable that serves it; null where none does alone. */
  readonly stock: number | null;
  /** The stock cables that serve it, two where they are joined; none where `missing` says what has to be brought. */
  readonly cables: readonly number[];
  readonly missing: readonly number[];
  /** What run and multicore do to the signal; null unless it is worth telling. Loop in ohm, corner in Hz, losses in dB. */
  readonly electrical: {
    readonly loop: number;
    readonly levelLoss: number;
    readonly corner: number | null;
    readonly lossAt20k: number;
  } | null;
  /** In the order in which the cable is laid; `total` is their sum. */
  readonly parts: readonly { readonly what: string; readonly length: number }[];
  /** Over the deck, deck frame: origin at the deck's centre, with the axes' senses of the kit frame. */
  readonly route: readonly { readonly x: number; readonly y: number }[];
  /** What the route had to pass through, where no way keeps clear. */
  readonly through: readonly Id[];
}

export interface FindingJson {
  readonly key: string;
  readonly code: FindingCode;
  readonly severity: Severity;
  /** Mics and pieces it is about, the main one first. */
  readonly about: readonly Id[];
  readonly place: PointJson | null;
  /** By name; mm, degrees or counts. A number that is not finite is null. */
  readonly numbers: Readonly<Record<string, number | null>>;
}

/** The report as a document of its own, with nothing in it that JSON can't hold. */
export function reportJson(layout: Layout, report: Report): ReportJson {
  const nameOf = (mic: Id) => layout.mics.find(({ id }) => id === mic)?.name ?? mic;
  const { clearances, runs, totals, findings } = report;
  return {
    format: 'strokespace-report',
    version: REPORT_VERSION,
    layout: { id: layout.id, name: layout.name, margin: rounded(layout.margin) },
    verdict: worst(clearances.map(({ verdict }) => verdict)),
    clearances: clearances.map(({ mic, verdict, clearance, nearest }) => ({
      mic,
      name: nameOf(mic),
      verdict,
      judgement: judgementOf({ mic, verdict }, report),
      clearance: finite(clearance),
      nearest: nearest ? nearestJson(nearest) : null,
    })),
    runs: runs.map((run) => runJson(run, nameOf(run.mic))),
    totals: {
      cable: rounded(totals.cable),
      longest: rounded(totals.longest),
      extra: rounded(totals.extra),
      laid: rounded(report.loom.laid),
      stock: totals.stock.map(countJson),
      missing: report.stock.missing.map(countJson),
      joins: report.stock.joins,
    },
    player: {
      name: layout.player.name,
      body: Object.fromEntries(
        Object.entries(report.player.body).map(([name, length]) => [name, rounded(length)]),
      ),
      playedBy: report.player.playedBy,
    },
    findings: findings.map(({ key, code, severity, about, place, numbers }) => ({
      key,
      code,
      severity,
      about,
      place: place ? point(place) : null,
      numbers: Object.fromEntries(Object.entries(numbers).map(([name, n]) => [name, finite(n)])),
    })),
    signOff: signOffJson(layout, report.signOff),
    patch: patchJson(layout, report),
    sound: soundJson(layout, report),
  };
}

const runJson = (run: RunRow, name: string): RunJson => ({
  mic: run.mic,
  name,
  input: run.input,
  total: rounded(run.total),
  shortest: rounded(run.shortest),
  extra: rounded(run.extra),
  stock: run.carried.length === 1 && run.carried[0] !== undefined ? rounded(run.carried[0]) : null,
  cables: run.carried.map(rounded),
  missing: run.missing.map(rounded),
  electrical: run.electrical.matters.length > 0 ? electricalJson(run.electrical) : null,
  parts: run.parts.map(({ what, length }) => ({ what, length: rounded(length) })),
  route: run.route.map(({ x, y }) => ({ x: rounded(x), y: rounded(y) })),
  through: run.through,
});

const electricalJson = ({ loop, levelLoss, corner, lossAt20k }: RunRow['electrical']) => ({
  loop: rounded(loop),
  levelLoss: rounded(levelLoss),
  corner: finite(corner),
  lossAt20k: rounded(lossAt20k),
});

const countJson = ({ length, count }: CableCountJson): CableCountJson => ({
  length: rounded(length),
  count,
});

const nearestJson = ({ movement, part, micPart, onMic, onMoving }: Nearest): NearestJson => ({
  movement: 'at' in movement ? { ...movement, at: rounded(movement.at) } : movement,
  part,
  micPart,
  onMic: point(onMic),
  onMoving: point(onMoving),
});

function worst(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes('struck')) return 'struck';
  return verdicts.includes('tight') ? 'tight' : 'clear';
}

/** To 0.001, and never -0. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
const finite = (value: number): number | null =>
  Number.isFinite(rounded(value)) ? rounded(value) : null;
const point = ({ x, y, z }: PointJson): PointJson => ({
  x: rounded(x),
  y: rounded(y),
  z: rounded(z),
});
