import type { Run } from '../cabling/run.ts';
import type { MicClearance } from '../clearance/nearest.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';

/** What a finding is about, for the plan to show and for the list to sort. Words are made in views. */
export type FindingCode =
  | 'mic-struck'
  | 'mic-tight'
  | 'mic-beyond-stand'
  | 'mic-in-shell'
  | 'boom-through-piece'
  | 'feet-overlap'
  | 'base-off-deck'
  | 'piece-off-deck'
  | 'piece-out-of-reach'
  | 'stand-may-tip'
  | 'clip-metal-rim'
  | 'run-no-way'
  | 'run-no-stock'
  | 'run-unplugged'
  | 'input-twice'
  | 'input-beyond-box'
  | 'more-mics-than-inputs'
  | 'lane-crossed';

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

export interface RunTotals {
  readonly cable: Mm;
  readonly longest: Mm;
  /** How many stock cables of each length the runs take, shortest first. */
  readonly stock: readonly { readonly length: Mm; readonly count: number }[];
}

/** Everything computed from one layout. */
export interface Report {
  readonly rig: Rig;
  readonly clearances: readonly MicClearance[];
  /** Sorted by how bad they are. */
  readonly findings: readonly Finding[];
  readonly runs: readonly Run[];
  readonly totals: RunTotals;
}

/** The names under which screens use a report's rows. */
export type ClearanceRow = Report['clearances'][number];
export type RunRow = Report['runs'][number];
