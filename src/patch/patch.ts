import type { Id } from '../layout/fields.ts';
import type { Channel } from './channels/channel.ts';
import type { CheckResult } from './lineCheck/checkResult.ts';
import type { PullTick } from './pull/pullItem.ts';
import { DEFAULT_SPARES, type SpareRules } from './pull/spares.ts';
import type { Ohms } from './quantities.ts';
import type { Split } from './splits/split.ts';
import type { MusicStyle } from './style.ts';

/** What is decided about plugging, counting and ticking, and cannot be computed from kit and mics. Plain JSON. */
export interface PatchSettings {
  readonly style: MusicStyle;
  /** Ids of channels in the order set by hand; null: festival order. Ids of channels that are gone count for nothing. */
  readonly order: readonly Id[] | null;
  /** What is set by hand, and second channels of a mic. A channel that is all as usual need not be here. */
  readonly channels: readonly Channel[];
  readonly splits: readonly Split[];
  /** Source impedance of the mics, for loads and levels lost. */
  readonly micImpedance: Ohms;
  readonly spares: SpareRules;
  /** Rolls of gaffer tape taken. */
  readonly tapeRolls: number;
  readonly ticks: readonly PullTick[];
  readonly lineCheck: readonly CheckResult[];
}

/** Where a layout starts. Source impedance and tape are common practice, from memory. */
export const DEFAULT_PATCH: PatchSettings = {
  style: 'rock',
  order: null,
  channels: [],
  splits: [],
  micImpedance: 150,
  spares: DEFAULT_SPARES,
  tapeRolls: 1,
  ticks: [],
  lineCheck: [],
};
