import type { Difference } from '../../layout/differences.ts';
import { type StandClass, standClassField } from '../../layout/mics/mount.ts';
import { standWords } from './kindWords.ts';
import { inSentence } from './nameOf.ts';

/** Fields of a mount that say by what a mic is held; its own words tell them together. */
export const HOLDING = new Set([
  ...['mount.kind', 'mount.drum', 'mount.kick', 'mount.stand', 'mount.material'],
]);

type Side = 'before' | 'after';

/**
 * By what a mic was held and by what it is: `from a rubber rim clip on the snare to a tall tripod boom`. Undefined where that is the same.
 * `nameOf` tells a piece's name by its id.
 */
export function mountChangeWords(
  fields: readonly Difference[],
  nameOf: (id: string) => string,
): string | undefined {
  const value = (path: string, side: Side): string | undefined => {
    const found = fields.find((field) => field.path === `mount.${path}`)?.[side];
    return typeof found === 'string' ? found : undefined;
  };
  const piece = (path: string, side: Side) => `the ${inSentence(nameOf(value(path, side) ?? ''))}`;
  const held = (side: Side): string => {
    switch (value('kind', side)) {
      case 'clip':
        return `a ${value('material', side)} rim clip on ${piece('drum', side)}`;
      case 'stand':
        return `a ${stand(value('stand', side))}`;
      case 'plateInKick':
        return `a plate in ${piece('kick', side)}`;
      default:
        return 'a plate on the deck';
    }
  };
  const changes = (path: string): boolean => fields.some((field) => field.path === `mount.${path}`);
  const fromTo = (tell: (side: Side) => string): string =>
    `from ${tell('before')} to ${tell('after')}`;
  if (changes('kind')) return fromTo(held);
  if (changes('drum')) return fromTo((side) => piece('drum', side));
  if (changes('kick')) return fromTo((side) => piece('kick', side));
  if (changes('stand')) return fromTo((side) => `a ${stand(value('stand', side))}`);
  if (changes('material')) return fromTo((side) => `a ${value('material', side)} rim clip`);
  return undefined;
}

function stand(name: string | undefined): string {
  const known = standClassField.safeParse(name);
  const stand: StandClass | undefined = known.success ? known.data : undefined;
  return stand === undefined ? 'stand' : inSentence(standWords(stand));
}
