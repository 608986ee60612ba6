import type { Id } from '../layout/fields.ts';
import { isCymbal } from '../layout/pieces/piece.ts';
import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { earOf, type Hearing } from './hearing.ts';
import type { Ear } from './radiation.ts';
import { shellAround } from './shell.ts';
import type { Source } from './source.ts';

/** What a mic is there for. `free`: it is said to hear nothing that sounds. */
export type MicRole = 'close' | 'overhead' | 'free';

/** A mic with what it is there for and what reaches it. */
export interface Listener {
  readonly placed: PlacedMic;
  readonly id: Id;
  readonly ear: Ear;
  readonly role: MicRole;
  /** The drum inside which it is. */
  readonly shell: Source | undefined;
  /** Its own source: the first that it hears. */
  readonly own: Source | undefined;
  /** All that it is there to hear. */
  readonly wanted: readonly Source[];
  /** Every piece that sounds, in the layout's order. */
  readonly heard: readonly Hearing[];
}

/** An overhead for one cymbal alone stands at least this far above it; nearer, it is that cymbal's close mic. */
const OVERHEAD_ABOVE: Mm = 400;

export const isCymbalSource = ({ piece }: Source): boolean =>
  isCymbal(piece) || piece.kind === 'hiHat';

/** A placed mic among sources; `hears` tells what reaches it from one of them, inside a drum or in the open. */
export function listenerOf(
  placed: PlacedMic,
  sources: readonly Source[],
  hears: (source: Source, shell: Source | undefined) => Hearing,
): Listener {
  const wanted = placed.mic.hears.flatMap(
    (id) => sources.find(({ piece }) => piece.id === id) ?? [],
  );
  const [own] = wanted;
  const shell = shellAround(placed.tip, sources);
  return {
    placed,
    id: placed.mic.id,
    ear: earOf(placed),
    role: own ? roleAmong(placed, wanted) : 'free',
    shell,
    own,
    wanted,
    heard: sources.map((source) => hears(source, shell)),
  };
}

/**
 * H20 An overhead hears a cymbal or hi-hat among other things, or one alone from at least 400 mm above it, and stands above
 *     all that it hears. Any other mic that hears something is a close mic.
 */
function roleAmong({ tip }: PlacedMic, wanted: readonly Source[]): MicRole {
  const above = tip.z - Math.max(...wanted.map(({ struck }) => struck.centre.z));
  const enough = wanted.length > 1 ? 0 : OVERHEAD_ABOVE;
  return wanted.some(isCymbalSource) && above >= enough ? 'overhead' : 'close';
}

/** What a listener hears of a source that it has been given. */
export function hearingOf({ heard }: Listener, source: Source): Hearing | undefined {
  return heard.find(({ piece }) => piece === source.piece.id);
}
