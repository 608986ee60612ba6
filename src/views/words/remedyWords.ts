import type { Layout } from '../../layout/layout.ts';
import type { Remedy } from '../../report/remedy.ts';
import type { FindingCode } from '../../report/report.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { showLength } from '../../units/lengthText.ts';
import { standWords } from './kindWords.ts';
import { nameOf } from './nameOf.ts';
import { verdictWord } from './verdictWords.ts';

/** What a tap on the remedy does: `Take a tall tripod boom`, `Turn the feet of Snare mic by 14° clockwise, seen from above`. */
export function remedyWords(remedy: Remedy, layout: Layout): string {
  if (remedy.kind === 'turn') {
    const { id, by } = remedy.feet;
    const way = by > 0 ? 'anticlockwise' : 'clockwise';
    return `Turn the feet of ${nameOf(layout, id)} by ${Math.abs(by)}° ${way}, seen from above`;
  }
  if (remedy.kind === 'base') {
    const by = showLength(Math.ceil(remedy.by), layout.units);
    return `Move the base in by ${by}; the mic stays`;
  }
  if (remedy.kind === 'wish') return wishWords(remedy, layout);
  const mount = layout.mics.find(({ id }) => id === remedy.mic)?.mount;
  const isSame = mount?.kind === 'stand' && mount.stand === remedy.stand;
  if (isSame) return 'Let the mast follow to where the stand reaches';
  const stand = standWords(remedy.stand);
  return `Take another stand: ${stand.charAt(0).toLowerCase()}${stand.slice(1)}`;
}

/** `Move it there: 62 mm clear`, and how near it comes where its mount does not reach. */
function wishWords(
  { short, clearance }: Extract<Remedy, { readonly kind: 'wish' }>,
  layout: Layout,
): string {
  const { units, margin } = layout;
  const where =
    short < 1
      ? 'Move it there'
      : `Move it as near as its mount goes, ${showLength(short, units)} short`;
  if (!Number.isFinite(clearance)) return where;
  const verdict = clearance < 0 ? 'struck' : clearance < margin ? 'tight' : 'clear';
  return `${where}: ${verdictWord(verdict)}, ${showClearance(clearance, layout)}`;
}

/**
 * What to do about a finding, line by line, by its remedy: null where it is known that there is none, undefined while nobody has looked.
 * No turn of feet is advised where it is known that none frees them, nor before that is known.
 */
export function nextLines(
  code: FindingCode,
  next: string,
  remedy: Remedy | null | undefined,
): readonly string[] {
  const none = noRemedyWords[code];
  const turns = code === 'feet-overlap' && next.startsWith('Turn');
  if (turns && !remedy) return remedy === null && none !== undefined ? [none] : [];
  return remedy === null && none !== undefined && code !== 'feet-overlap' ? [next, none] : [next];
}

/** Why there is no remedy of one tap, for the findings that could have one. */
export const noRemedyWords: Readonly<Partial<Record<FindingCode, string>>> = {
  'mic-beyond-stand': 'No class of stand reaches it from where its base stands.',
  'feet-overlap': 'No turn of the feet alone frees them: one of the two must move.',
  'mic-move-wished':
    'No spot was pointed at that its mount lets it go nearer to: ask, and move it by hand.',
  'base-off-deck': 'No turn of its feet and no step straight in helps: move it by hand.',
  'stand-may-tip': 'No turn of the feet alone makes it firm.',
};
