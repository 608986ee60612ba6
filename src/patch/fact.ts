import type { Id } from '../layout/fields.ts';

/**
 * What can be wrong with the input list. `run-unplugged` and `input-twice` are the facts of the same name of the cable room
 * (K3), for lists that are read without routes: who shows both shows one.
 *
 * I1 phantom-missing: a mic whose class needs 48 V gets none.
 * I2 ribbon-with-phantom: a passive ribbon (a ribbon whose class needs no 48 V) gets it.
 * I3 phantom-not-needed: another mic that needs no 48 V gets it.
 * I4 input-two-channels: one box input feeds more than one channel; `input`, `channels`.
 * I5 input-twice: more than one mic in one box input; all of them, `input`.
 * I6 channel-twice: more than one row with one channel number; the mics, `channel`.
 * I7 run-unplugged: the mic is in no box input.
 */
export type InputCode =
  | 'phantom-missing'
  | 'ribbon-with-phantom'
  | 'phantom-not-needed'
  | 'input-two-channels'
  | 'input-twice'
  | 'channel-twice'
  | 'run-unplugged';

/** What can be wrong with a split. The rules S1 to S12 stand at `splitFacts`. */
export type SplitCode =
  | 'split-of-split'
  | 'split-of-nothing'
  | 'mic-split-twice'
  | 'split-few-legs'
  | 'split-direct-legs'
  | 'split-channel-legs'
  | 'split-phantom-none'
  | 'split-phantom-several'
  | 'split-phantom-isolated'
  | 'split-lift-direct'
  | 'split-plain-y'
  | 'split-load-low';

export type PatchCode = InputCode | SplitCode;

/**
 * Why a fact matters, for the views to put into words. Where no source is named: common practice, no source.
 *
 * - `needsSupply`: the mic's electronics run on phantom power; without it there is no signal, or next to none.
 * - `faultyCable`: a shorted leg, or plugging under power, sends a current through the ribbon, which it can stretch or burn.
 * - `patchBay`: TRS patch points short the legs one after the other while a plug slides in.
 * - `noNeed`: it does a balanced mic no good, and plugging under power thumps.
 * - `levelsTied`: both channels share one preamplifier: its gain, pad and 48 V.
 * - `signalsMix`: two mics in one input are added before the desk and load each other; neither can be turned down alone.
 * - `oneHeardAtATime`: one channel can carry one signal.
 * - `notHeard`: what is plugged nowhere is heard nowhere.
 * - `loadAdds`: every further input stands in parallel and takes level.
 * - `supplyUnclear`: with more than one device on the way it is open which leg is the hard-wired one to the mic.
 * - `sourceMissing`: what the split takes its signal from is not there.
 * - `nothingSplit`: fewer than two ends.
 * - `oneDirect`: a passive split has one hard-wired leg; the others hang on the transformer.
 * - `noTransformer`: a plain Y joins wires: no leg of it is isolated.
 * - `oneChannel`: a mic's row of the input list is one end, not two.
 * - `suppliesInParallel`: two supplies feed one mic: more current than either is meant to give, and either may be switched off alone.
 * - `blocksDirectCurrent`: a transformer passes audio only.
 * - `phantomReturn`: the supply's current comes back on pin 1: lifted, the mic is dead or hums.
 * - `screenOpen`: lifted on the direct leg, the mic's cable has a screen that ends nowhere.
 * - `whoSupplies`: nothing in a plain Y says which end gives the 48 V.
 * - `groundsJoined`: a plain Y joins the grounds of both ends: a loop that may hum.
 * - `loadedMic`: less than five times the source impedance takes level and, from a dynamic mic, tone.
 *
 * Direct leg, isolated leg, lift and Y: pages on passive mic splitters and phantom power, listed in the reference notes.
 */
export type PatchReason =
  | 'needsSupply'
  | 'faultyCable'
  | 'patchBay'
  | 'noNeed'
  | 'levelsTied'
  | 'signalsMix'
  | 'oneHeardAtATime'
  | 'notHeard'
  | 'loadAdds'
  | 'supplyUnclear'
  | 'sourceMissing'
  | 'nothingSplit'
  | 'oneDirect'
  | 'noTransformer'
  | 'oneChannel'
  | 'suppliesInParallel'
  | 'blocksDirectCurrent'
  | 'phantomReturn'
  | 'screenOpen'
  | 'whoSupplies'
  | 'groundsJoined'
  | 'loadedMic';

/** A fact for the report to judge and the views to put into words. */
export interface PatchFact<Code extends PatchCode = PatchCode> {
  readonly code: Code;
  readonly reasons: readonly PatchReason[];
  /** Mics and splits it is about, the main one first. */
  readonly ids: readonly Id[];
  /** Counts, channel and input numbers, ohms, dB, V. */
  readonly numbers: Readonly<Record<string, number>>;
}
