import type { CableRun, Cables } from '../cabling/cables.ts';
import type { CablingCode } from '../cabling/cablingFact.ts';
import type { RunTotals } from '../cabling/runTotals.ts';
import type { AgainstPlayerCode } from '../clearance/againstPlayer.ts';
import type { MicClearance } from '../clearance/nearest.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { PatchCode } from '../patch/fact.ts';
import type { Rig } from '../rig/placed.ts';
import type { StandingCode } from '../rig/standing/standing.ts';
import type { PlayerFacts } from './playerFacts.ts';
import type { SignOffCode, SignOffState } from './signOffState.ts';

/** What the patch alone says: what is unplugged and which input is used twice, the cable room says, with the place. */
export type PatchFindingCode = Exclude<PatchCode, CablingCode>;

/** What a finding is about, for the plan to show and for the list to sort. Words are made in views. */
export type FindingCode =
  | 'mic-struck'
  | 'mic-tight'
  | 'mic-beyond-stand'
  | 'mic-far-away'
  | 'mic-not-close'
  | 'piece-out-of-reach'
  | 'piece-not-played'
  | 'stand-may-tip'
  | 'clip-metal-rim'
  | StandingCode
  | AgainstPlayerCode
  | CablingCode
  | PatchFindingCode
  | SignOffCode;

export type Severity = 'stop' | 'warn' | 'note';

export interface Finding {
  /** Stable while the same thing stays wrong: code and ids. */
  readonly key: string;
  readonly code: FindingCode;
  readonly severity: Severity;
  /** Ids of the mics and pieces it is about, the main one first. */
  readonly about: readonly Id[];
  /** Where, kit frame; undefined when it has no place. */
  readonly place: Vec3 | undefined;
  /** The numbers its words need, in mm, degrees or counts. */
  readonly numbers: Readonly<Record<string, number>>;
}

/** Everything computed from one layout. */
export interface Report {
  readonly rig: Rig;
  readonly clearances: readonly MicClearance[];
  /** Sorted by how bad they are. */
  readonly findings: readonly Finding[];
  /** One for every mic, as they lie in the loom. */
  readonly runs: readonly CableRun[];
  /** The lines in which the runs lie, and where they part. */
  readonly loom: Cables['loom'];
  /** How the cables carried serve the runs. */
  readonly stock: Cables['stock'];
  readonly totals: RunTotals;
  readonly player: PlayerFacts;
  readonly signOff: SignOffState;
}

/** The names under which screens use a report's rows. */
export type ClearanceRow = Report['clearances'][number];
export type RunRow = Report['runs'][number];
export type LoomLine = Report['loom']['stretches'][number];
export type Breakout = Report['loom']['breakouts'][number];
