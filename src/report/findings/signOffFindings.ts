import { vec } from '../../geometry/vector.ts';
import type { Rig } from '../../rig/placed.ts';
import type { Finding } from '../report.ts';
import type { SignOffCode, SignOffState } from '../signOffState.ts';

/**
 * A wish with its place and how far it is, a sign-off that is stale, or an answer without consent whose kit was changed since, with how many `mics`
 * and `pieces` changed (`player`: 1 when the player did), one without consent, and one that proves nothing. Before the first sign-off there is nothing to say.
 */
export function signOffFindings(state: SignOffState, rig: Rig): readonly Finding[] {
  switch (state.kind) {
    case 'none':
      return [];
    case 'broken':
      return [plain('sign-off-broken')];
    case 'withheld':
      return [plain('sign-off-withheld'), ...wishFindings(state, rig)];
    case 'holds':
      return wishFindings(state, rig);
    case 'stale':
    case 'reworked': {
      const { mics, pieces, player } = state.changes;
      const numbers = {
        mics: mics.length,
        pieces: pieces.length,
        player: Math.min(1, player.length),
      };
      const here = [...mics, ...pieces].filter(({ change }) => change !== 'gone');
      const about = here.map(({ id }) => id);
      return [{ ...plain(`sign-off-${state.kind}`), about, numbers }, ...wishFindings(state, rig)];
    }
  }
}

function wishFindings(
  { wishes, signOff }: Exclude<SignOffState, { readonly kind: 'none' | 'broken' }>,
  rig: Rig,
): readonly Finding[] {
  const tips = new Map(rig.mics.map(({ mic, tip }) => [mic.id, tip]));
  return [
    ...wishes.flatMap(({ mic, wish }): Finding[] => {
      const tip = tips.get(mic);
      if (!tip) return [];
      const wished: Pick<Finding, 'place' | 'numbers'> = wish
        ? {
            place: vec(wish.x, wish.y, tip.z),
            numbers: { distance: Math.hypot(wish.x - tip.x, wish.y - tip.y) },
          }
        : { place: tip, numbers: {} };
      return [
        { ...plain('mic-move-wished'), key: `mic-move-wished:${mic}`, about: [mic], ...wished },
      ];
    }),
    ...signOff.answers.flatMap(({ about, answer }): Finding[] =>
      about !== 'mic' && answer === 'move' ? [plain(`${about}-move-wished`)] : [],
    ),
  ];
}

const plain = (code: SignOffCode): Finding => ({
  key: code,
  code,
  severity: 'warn',
  about: [],
  place: undefined,
  numbers: {},
});
