import { remembered } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { isWhole, signedKit } from '../layout/signed.ts';
import { type SignedState, stateBy } from '../layout/signedState.ts';
import { asksForChange, type MicAnswer, type SignOff } from '../layout/signOff.ts';
import type { Rig } from '../rig/placed.ts';
import {
  changesFrom,
  isUnchanged,
  type KitChanges,
  type PlacedKit,
  placedKit,
} from './compareKits.ts';

/**
 * How the last sign-off stands to the kit of now:
 * G1 `none`: nothing was signed off;
 * G2 `broken`: its digest is not that of its text, or its text holds no kit. It proves nothing;
 * G3 `stale`: the drummer agreed, and something is not as it was shown; `reworked`: the drummer did not agree, and something was changed since.
 *    Only what was agreed to is a sign-off, and only a sign-off can be stale;
 * G4 `holds`: all is as it was shown and the drummer agreed; `withheld`: all is as it was shown and the drummer did not agree.
 */
export type SignOffState =
  | { readonly kind: 'none' }
  | { readonly kind: 'broken'; readonly signOff: SignOff; readonly why: 'digest' | 'unreadable' }
  | {
      readonly kind: Exclude<SignedState, 'none' | 'broken'>;
      readonly signOff: SignOff;
      /** Empty unless it is stale or reworked. */
      readonly changes: KitChanges;
      /** What was asked to be moved, of the mics that are as they were shown (G6). */
      readonly wishes: readonly MicAnswer[];
    };

/** What there is to do about the drummer's sign-off. */
export type SignOffCode =
  | 'mic-move-wished'
  | 'stands-move-wished'
  | 'lane-move-wished'
  | 'sign-off-stale'
  | 'sign-off-withheld'
  | 'sign-off-reworked'
  | 'sign-off-broken';

type SignOffs = Layout['signOffs'];

/** A sign-off checked once: its text can be long. */
type Checked =
  | {
      readonly ok: true;
      /** What changed since, told with the names that the answers of these sign-offs give. */
      readonly changesFor: (signOffs: SignOffs) => (now: PlacedKit) => KitChanges;
    }
  | { readonly ok: false; readonly why: 'digest' | 'unreadable' };

/** Reads states; the kit of a sign-off is read and placed once. Same input, same answer. */
export function createSignOffReader(): (layout: Layout, rig: Rig) => SignOffState {
  let using: Layout | undefined;
  const checked = remembered((signOff: SignOff): Checked => {
    if (!isWhole(signOff)) return { ok: false, why: 'digest' };
    const parts = using && signedKit(signOff, using);
    if (!parts) return { ok: false, why: 'unreadable' };
    const kit = placedKit(parts);
    return { ok: true, changesFor: remembered((signOffs) => changesFrom(named(kit, signOffs))) };
  });
  return (layout, rig) => {
    const signOff = layout.signOffs.at(-1);
    if (!signOff) return { kind: 'none' };
    using = layout;
    const before = checked(signOff);
    if (!before.ok) return { kind: 'broken', signOff, why: before.why };
    const changes = before.changesFor(layout.signOffs)({ parts: layout, rig });
    return {
      kind: stateBy(signOff.consent, isUnchanged(changes)),
      signOff,
      changes,
      wishes: wishesIn(signOff, changes),
    };
  };
}

/** Names are not signed: those of what is gone come from the answers, as far as it was asked about. */
function named({ parts, rig }: PlacedKit, signOffs: SignOffs): PlacedKit {
  const names = new Map(
    signOffs.flatMap(({ answers }) =>
      answers.flatMap((answer) => (answer.about === 'mic' ? [[answer.mic, answer.name]] : [])),
    ) as readonly (readonly [Id, string])[],
  );
  const mics = rig.mics.map((placed) => {
    const { mic } = placed;
    return { ...placed, mic: { ...mic, name: names.get(mic.id) ?? mic.name } };
  });
  return { parts, rig: { ...rig, mics } };
}

/** G6 A wish stands as long as its mic is as it was shown: once it was moved, the drummer is asked again. */
function wishesIn({ answers }: SignOff, { mics }: KitChanges): readonly MicAnswer[] {
  const changed = new Set(mics.map(({ id }) => id));
  return answers.filter(
    (answer): answer is MicAnswer =>
      answer.about === 'mic' && answer.answer === 'move' && !changed.has(answer.mic),
  );
}

/** Not agreed to, and nothing was asked to be moved: none of it was approved, and nobody knows what should change. */
export const isRefusedUnsaid = (state: SignOffState): boolean =>
  (state.kind === 'withheld' || state.kind === 'reworked') && !asksForChange(state.signOff);

/**
 * G5 The mics that the next sign-off asks about, in the layout's order: all of them the first time, after a broken one, after one that
 *    was refused without a word of what should change, and when another player's body or strokes were put in; else those that changed,
 *    and those whose wish still stands.
 */
export function micsToAsk({ mics }: Pick<Layout, 'mics'>, state: SignOffState): readonly Id[] {
  const all = mics.map(({ id }) => id);
  if (state.kind === 'none' || state.kind === 'broken' || isRefusedUnsaid(state)) return all;
  if (state.changes.player.some(({ path }) => path !== 'name')) return all;
  const ask = new Set([
    ...state.changes.mics.map(({ id }) => id),
    ...state.wishes.map(({ mic }) => mic),
  ]);
  return all.filter((id) => ask.has(id));
}
