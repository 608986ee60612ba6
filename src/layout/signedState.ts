import type { Layout } from './layout.ts';
import { isWhole, signedKit, signedText } from './signed.ts';

/**
 * How the last sign-off stands to the kit of now, in one word; what each means is told by rules G1 to G4 in
 * `src/report/signOffState.ts`, which also tells what changed.
 */
export type SignedState = 'none' | 'broken' | 'stale' | 'holds' | 'withheld' | 'reworked';

/**
 * N5 The state without placing anything: the kit is as it was shown when the text of the signed kit, brought to this version's shapes, is
 *    the very text that would be signed now.
 */
export function signedState(layout: Layout): SignedState {
  const signOff = layout.signOffs.at(-1);
  if (!signOff) return 'none';
  const kit = isWhole(signOff) ? signedKit(signOff, layout) : undefined;
  return kit ? stateBy(signOff.consent, signedText(kit) === signedText(layout)) : 'broken';
}

/** The state of a sign-off that can be read. */
export function stateBy(
  agreed: boolean,
  unchanged: boolean,
): Exclude<SignedState, 'none' | 'broken'> {
  if (agreed) return unchanged ? 'holds' : 'stale';
  return unchanged ? 'withheld' : 'reworked';
}
