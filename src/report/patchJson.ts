import { swapOf } from '../cabling/swap/swapSteps.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Leg, MusicStyle, PullItem, Split } from '../layout/patch.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import type { Chosen, InputRow } from '../patch/inputList.ts';
import { splitLoad } from '../patch/splits/splitLoad.ts';
import { gives } from '../patch/splits/supply.ts';
import { patchReport } from './patch.ts';
import type { Report } from './report.ts';
import { type Plain, plain } from './soundJson.ts';

/** From plan to patch. Ohms, Hz, dB and counts; lengths in mm. */
export interface PatchJson {
  readonly style: MusicStyle;
  /** Whether the rows of `inputs` stand in festival order or in one set by hand. */
  readonly order: 'festival' | 'byHand';
  /** Source impedance of the mics, by which `splits` are reckoned. */
  readonly micImpedance: number;
  /** The input list, in its order. */
  readonly inputs: readonly InputJson[];
  readonly splits: readonly SplitJson[];
  /** Everything to take, with what went out and what came back; what is no longer needed but went out stands last. */
  readonly pull: readonly PullJson[];
  /** One for each row of `inputs`. */
  readonly lineCheck: readonly CheckJson[];
  /** What to undo before each drum comes out, by drum. */
  readonly swaps: readonly SwapJson[];
}

/** A value of a row; `start` is what it would be if it were not set by hand. */
export type ChosenJson<T> = Plain<Chosen<T>>;

/** One row of the input list. */
export interface InputJson {
  /** Of the channel: that of its mic, or of a further channel its own. */
  readonly id: Id;
  readonly channel: number;
  readonly mic: Id;
  readonly name: string;
  /** Numbered input of the box; null: not plugged. */
  readonly input: number | null;
  readonly source: InputRow['source'];
  /** Pieces that the mic is meant to hear, its own first. */
  readonly hears: readonly Id[];
  /** Where a close mic of a drum stands to it; null for all others. */
  readonly place: InputRow['place'];
  readonly micClass: Id;
  readonly mount: InputRow['mount']['kind'];
  /** Class of its stand; null without one. */
  readonly stand: string | null;
  /** Whether the channel gives 48 V. */
  readonly phantom: ChosenJson<boolean>;
  /** How many supplies of 48 V reach the mic, over all ends of its split. */
  readonly supplies: number;
  readonly polarity: ChosenJson<'normal' | 'reversed'>;
  /** Hz; 0: none; null: nothing is known to start from. */
  readonly highPass: ChosenJson<number | null>;
  /** The range that is usual in the style, Hz; null where none is known. */
  readonly highPassRange: { readonly low: number | null; readonly high: number | null } | null;
  /** dB, not negative. */
  readonly pad: ChosenJson<number>;
  readonly insert: Plain<InputRow['insert']>;
  /** The split of its signal; null: none. */
  readonly split: Id | null;
  readonly notes: string;
}

/** One signal to several places. */
export interface SplitJson {
  readonly id: Id;
  /** The mic; wrongly it may be another split, or nothing: `findings` say so. */
  readonly of: Id;
  readonly kind: Split['kind'];
  /** What all legs together are to the mic, ohms; null without legs. */
  readonly load: number | null;
  readonly legs: readonly {
    /** Where it goes; `channel` is the mic's own row. */
    readonly to: string;
    readonly connection: Leg['connection'];
    /** Pin 1 is open. */
    readonly lifted: boolean;
    readonly impedance: number;
    /** Whether its end gives 48 V. */
    readonly phantom: boolean;
    /** What it loses against standing alone at the mic, dB, not negative. */
    readonly lost: number | null;
  }[];
}

/** One sort of thing to take; `which` tells sorts of a kind apart. */
export interface PullJson extends PullItem {
  readonly needed: number;
  readonly spare: number;
  readonly total: number;
  readonly out: number;
  readonly back: number;
  /** Went out and is not back. */
  readonly missing: number;
}

/** What came of one line. */
export interface CheckJson {
  /** The row of `inputs`. */
  readonly id: Id;
  /** `open`: not checked; `stale`: mic, plug or 48 V changed since. */
  readonly state: 'pass' | 'fail' | 'skip' | 'open' | 'stale';
  readonly note: string;
  /** What to do about 48 V before the line is opened. */
  readonly phantom: 'leave-on' | 'leave-off' | 'switch-on' | 'switch-off';
}

/** What lifting one drum out takes. */
export interface SwapJson {
  readonly drum: Id;
  /** How far it is lifted: its own height. */
  readonly rise: number | null;
  /** In the order in which they are best done; `place` in the kit frame. */
  readonly steps: readonly {
    readonly what: string;
    readonly about: Id;
    readonly place: Plain<{ readonly x: number; readonly y: number; readonly z: number }>;
  }[];
}

/** The patch of a layout as plain JSON. */
export function patchJson(layout: Layout, report: Report): PatchJson {
  const { patch, pieces } = layout;
  const { rows, steps, pull, strike } = patchReport(layout, report);
  return {
    style: patch.style,
    order: patch.order === null ? 'festival' : 'byHand',
    micImpedance: patch.micImpedance,
    inputs: rows.map(inputJson),
    splits: patch.splits.map((split) => splitJson(split, rows, patch.micImpedance)),
    pull: strike.map(({ kind, which, total, out, back, missing }) => {
      const line = pull.find((each) => each.kind === kind && each.which === which);
      const { needed, spare } = line ?? { needed: 0, spare: 0 };
      return { kind, which, needed, spare, total, out, back, missing };
    }),
    lineCheck: steps.map(({ row, state, note, phantom }) => ({ id: row.id, state, note, phantom })),
    swaps: pieces.filter(isDrum).flatMap(({ id }) => plain(swapOf(report.rig, id)) ?? []),
  };
}

const inputJson = (row: InputRow): InputJson => ({
  id: row.id,
  channel: row.channel,
  mic: row.mic,
  name: row.name,
  input: row.input,
  source: row.source,
  hears: row.hears,
  place: row.place,
  micClass: row.micClass.id,
  mount: row.mount.kind,
  stand: row.mount.kind === 'stand' ? row.mount.stand : null,
  phantom: plain(row.phantom),
  supplies: row.supplies,
  polarity: plain(row.polarity),
  highPass: plain(row.highPass),
  highPassRange: row.highPassRange && plain(row.highPassRange),
  pad: plain(row.pad),
  insert: plain(row.insert),
  split: row.split,
  notes: row.notes,
});

function splitJson(
  { id, of, kind, legs }: Split,
  rows: readonly InputRow[],
  source: number,
): SplitJson {
  const channel = rows.some(({ mic, phantom }) => mic === of && phantom.value);
  const { load, lost } = splitLoad(
    source,
    legs.map(({ impedance }) => impedance),
  );
  return {
    id,
    of,
    kind,
    load: plain(load),
    legs: legs.map((leg, index) => ({
      to: leg.to === 'channel' ? 'channel' : leg.name,
      connection: leg.connection,
      lifted: leg.lifted,
      impedance: leg.impedance,
      phantom: gives(leg, channel),
      lost: plain(lost[index] ?? 0),
    })),
  };
}
