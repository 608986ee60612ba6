import type { Document } from './document.ts';

/**
 * From version 1: the player's trunk lean and way of playing the hi-hat were the program's own until then, so a layout keeps what
 * it was computed with: 200 mm, and either hand.
 */
export function fromVersion1(document: Document): Document {
  const { player } = document;
  const isPlayer = typeof player === 'object' && player !== null && !Array.isArray(player);
  return {
    ...document,
    schema: 2,
    ...(isPlayer && { player: { ...player, hiHat: 'either', lean: 200 } }),
  };
}
