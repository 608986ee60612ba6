import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { ThingChange } from './compareKits.ts';
import { micsToAsk, type SignOffState } from './signOffState.ts';

/** How the last sign-off stands to the layout. */
export interface SignOffJson {
  /** `none` never signed; `holds` agreed and unchanged; `withheld` not agreed; `stale` agreed, and changed since; `reworked` not agreed, and changed since; `broken` its digest or text is wrong. */
  readonly state: SignOffState['kind'];
  readonly name: string | null;
  /** By the clock of the tablet that it was signed on. */
  readonly at: string | null;
  /** The digest as it is stored; with `broken` it is not that of the text. */
  readonly digest: string | null;
  /** What is not as it was shown. */
  readonly changes: {
    /** Paths of the player's fields. */
    readonly player: readonly string[];
    readonly mics: readonly ThingChangeJson[];
    readonly pieces: readonly ThingChangeJson[];
  };
  /** Mics that the drummer wishes elsewhere. */
  readonly wishes: readonly Id[];
  /** Mics that the next sign-off asks about. */
  readonly toAsk: readonly Id[];
}

export interface ThingChangeJson {
  readonly id: Id;
  readonly change: ThingChange['change'];
  /** mm, mm on the plan, and degrees. */
  readonly moved: number;
  readonly base: number;
  readonly turned: number;
}

const NO_CHANGES: SignOffJson['changes'] = { player: [], mics: [], pieces: [] };

export function signOffJson(layout: Layout, state: SignOffState): SignOffJson {
  const toAsk = micsToAsk(layout, state);
  if (state.kind === 'none') {
    const nobody = { name: null, at: null, digest: null };
    return { state: 'none', ...nobody, changes: NO_CHANGES, wishes: [], toAsk };
  }
  const { name, at, digest } = state.signOff;
  const who = { state: state.kind, name, at, digest };
  if (state.kind === 'broken') return { ...who, changes: NO_CHANGES, wishes: [], toAsk };
  const { player, mics, pieces } = state.changes;
  return {
    ...who,
    changes: {
      player: player.map(({ path }) => path),
      mics: mics.map(changeJson),
      pieces: pieces.map(changeJson),
    },
    wishes: state.wishes.map(({ mic }) => mic),
    toAsk,
  };
}

const changeJson = ({ id, change, moved, base, turned }: ThingChange): ThingChangeJson => ({
  id,
  change,
  moved: rounded(moved),
  base: rounded(base),
  turned: rounded(turned),
});

const rounded = (value: number): number => Math.round(value * 1000) / 1000;
