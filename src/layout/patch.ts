import { z } from 'zod';
import { idField, nameField, within } from './fields.ts';

/** What is decided about plugging, counting and ticking: the input list, splits, pull list and line check. */

/** Styles of music for which starting points differ. */
export const musicStyleField = z.enum(['rock', 'pop', 'jazz', 'bigBand', 'worship', 'metal']);
export type MusicStyle = z.infer<typeof musicStyleField>;

export const polarityField = z.enum(['normal', 'reversed']);
export type Polarity = z.infer<typeof polarityField>;

/** What is inserted in a channel. */
export const insertField = z.enum(['none', 'gate', 'compressor', 'gateAndCompressor']);
export type Insert = z.infer<typeof insertField>;

/**
 * One channel of the input list as far as it is set by hand; null: as usual. The first channel of a mic has the mic's id; a
 * second one of the same mic has an id of its own.
 */
export const channelSchema = z.strictObject({
  id: idField,
  mic: idField,
  /** Its number; null: the one after the row before (the first row: 1). */
  number: z.number().int().min(1).max(999).nullable(),
  phantom: z.boolean().nullable(),
  polarity: polarityField.nullable(),
  /** Hz. 0: no high-pass. */
  highPass: within(0, 1000).nullable(),
  /** How far the signal is turned down before the preamplifier, dB, not negative. 0: no pad. */
  pad: within(0, 60).nullable(),
  insert: insertField.nullable(),
  notes: z.string().max(200),
});
export type Channel = z.infer<typeof channelSchema>;

const legFacts = {
  /** `direct`: hard-wired to the mic. `isolated`: over a transformer, which passes audio only. */
  connection: z.enum(['direct', 'isolated']),
  /** Pin 1 is open at this end. */
  lifted: z.boolean(),
  /** Input impedance of what it goes to, ohms. */
  impedance: within(50, 1_000_000),
};

/** The leg to the mic's own row of the input list: its 48 V is that of the row. */
export const channelLeg = z.strictObject({ to: z.literal('channel'), ...legFacts });
/** A leg to anywhere else, by name: monitors, a recorder, the amplifier of a seat shaker. */
export const otherLeg = z.strictObject({
  to: z.literal('other'),
  name: nameField,
  ...legFacts,
  /** Whether that end gives 48 V. */
  phantom: z.boolean(),
});
export const legSchema = z.discriminatedUnion('to', [channelLeg, otherLeg]);
export type Leg = z.infer<typeof legSchema>;

/** One signal to several places: with a transformer in a passive splitter, or a plain Y, wires alone. */
export const splitSchema = z.strictObject({
  id: idField,
  /** The mic whose signal is split. The id of another split, or of nothing, is a finding. */
  of: idField,
  kind: z.enum(['transformer', 'y']),
  legs: z.array(legSchema).max(8),
});
export type Split = z.infer<typeof splitSchema>;

/**
 * What is counted. `base`, `boom` and `counterweight` are the parts of the stands, for stands that travel in parts; `sandbag` is
 * what stands that may tip are weighed down with; `micHolder` holds a mic on a stand.
 */
export const pullKindField = z.enum([
  'mic',
  'rimClip',
  'micHolder',
  'stand',
  'base',
  'boom',
  'counterweight',
  'sandbag',
  'cable',
  'box',
  'tail',
  'splitter',
  'yLead',
  'tape',
]);
export type PullKind = z.infer<typeof pullKindField>;

/** How many spares are taken of what is needed: a share, and at least so many of each sort. */
export const spareRule = z.strictObject({
  percent: within(0, 200),
  least: z.number().int().min(0).max(99),
});
export type SpareRule = z.infer<typeof spareRule>;

/** One rule for all kinds, and others for some. */
export const spareRules = z.strictObject({
  usual: spareRule,
  byKind: z.partialRecord(pullKindField, spareRule),
});
export type SpareRules = z.infer<typeof spareRules>;

const tally = z.number().int().min(0).max(9999);

/**
 * How many of a sort were carried out to the stage, and how many came back. `which` tells sorts of a kind apart: a mic's or
 * stand's class, a clip's material, `tripod` or `round`, a length in mm, a number of inputs or legs; empty where there is only
 * one sort.
 */
export const pullTick = z.strictObject({
  kind: pullKindField,
  which: z.string().max(80),
  out: tally,
  back: tally,
});
export type PullTick = z.infer<typeof pullTick>;
/** One sort of thing. */
export type PullItem = Readonly<Pick<PullTick, 'kind' | 'which'>>;

export const checkOutcomeField = z.enum(['pass', 'fail', 'skip']);
export type CheckOutcome = z.infer<typeof checkOutcomeField>;

/** What came of checking one channel, and what was checked: a changed plug or mic makes the result stale. */
export const checkResult = z.strictObject({
  channel: idField,
  outcome: checkOutcomeField,
  note: z.string().max(200),
  mic: idField,
  micClass: idField,
  /** The numbered input of the box; null: not plugged. */
  input: z.number().int().min(1).max(64).nullable(),
  /** Whether 48 V reached the mic. */
  phantom: z.boolean(),
});
export type CheckResult = z.infer<typeof checkResult>;

/** All of it. What `order`, `ticks` and `lineCheck` name may be gone: it counts for nothing then. */
export const patchSchema = z.strictObject({
  style: musicStyleField,
  /** Ids of channels in the order set by hand; null: festival order. */
  order: z.array(idField).max(128).nullable(),
  /** What is set by hand, and second channels of a mic. A channel that is all as usual need not be here. */
  channels: z.array(channelSchema).max(128),
  splits: z.array(splitSchema).max(32),
  /** Source impedance of the mics, ohms, for loads and levels lost. */
  micImpedance: within(1, 10_000),
  spares: spareRules,
  /** Rolls of gaffer tape taken. */
  tapeRolls: z.number().int().min(0).max(99),
  ticks: z.array(pullTick).max(200),
  lineCheck: z.array(checkResult).max(128),
});
export type PatchSettings = z.infer<typeof patchSchema>;

const NO_SPARES: SpareRule = { percent: 0, least: 0 };

/**
 * Where a layout starts. Source impedance and tape are common practice, from memory. Spares: a tenth, at least one of each; one
 * box, one tail and the sandbags do without (common practice, no source).
 */
export const DEFAULT_PATCH: PatchSettings = {
  style: 'rock',
  order: null,
  channels: [],
  splits: [],
  micImpedance: 150,
  spares: {
    usual: { percent: 10, least: 1 },
    byKind: { box: NO_SPARES, tail: NO_SPARES, sandbag: NO_SPARES },
  },
  tapeRolls: 1,
  ticks: [],
  lineCheck: [],
};
