import { findMicClass, type MountChoice, usualMounts } from '../../layout/catalogue/micClasses.ts';
import { offeredMics } from '../../layout/catalogue/offered/offeredMics.ts';
import { STAND_CLASSES } from '../../layout/catalogue/standClasses.ts';
import { changeMount, deleteMic, setMicClass, setStandClass } from '../../layout/edit/mics.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Mount, StandClass } from '../../layout/mics/mount.ts';
import { isDrum } from '../../layout/pieces/piece.ts';
import { firstClear } from './firstClear.ts';

/** How a mount is chosen from the list. */
export const choiceOf = (mount: Mount): MountChoice =>
  mount.kind === 'stand' ? mount.stand : mount.kind;

/** How a mic can be held: what suits its class and source, and what holds it now. */
export function mountChoices(layout: Layout, mic: Mic): readonly MountChoice[] {
  const micClass = findMicClass(layout, mic.micClass);
  const source = layout.pieces.find((piece) => piece.id === mic.hears[0]);
  const suits = (choice: MountChoice): boolean => {
    if (choice === 'clip') return source !== undefined && isDrum(source);
    return choice !== 'plateInKick' || source?.kind === 'kick';
  };
  const usual = micClass ? usualMounts(micClass).filter(suits) : [];
  return [...new Set([choiceOf(mic.mount), ...usual])];
}

const isStand = (choice: MountChoice): choice is StandClass =>
  STAND_CLASSES.some(({ standClass }) => standClass === choice);

/** Holds a mic another way, at the first usual place that is clear; one stand is changed for another where it stands. */
export function remount(layout: Layout, id: Id, choice: MountChoice): Layout {
  const mic = layout.mics.find((each) => each.id === id);
  if (!mic) return layout;
  if (mic.mount.kind === 'stand' && isStand(choice)) return setStandClass(layout, id, choice);
  const without = deleteMic(layout, id);
  const offered = heldBy(offeredMics(without, mic.hears, mic.micClass), choice);
  const placed = firstClear(without, offered);
  return placed ? changeMount(layout, id, () => placed.mount) : layout;
}

function* heldBy(offered: Iterable<Mic>, choice: MountChoice): Iterable<Mic> {
  for (const mic of offered) if (choiceOf(mic.mount) === choice) yield mic;
}

/** Gives a mic another class; where that class is not held as the mic is now, it is held as usual. */
export function reclass(layout: Layout, id: Id, micClass: Id): Layout {
  const changed = setMicClass(layout, id, micClass);
  const mic = changed.mics.find((each) => each.id === id);
  const known = findMicClass(changed, micClass);
  if (!mic || !known || usualMounts(known).includes(choiceOf(mic.mount))) return changed;
  const [, usual] = mountChoices(changed, mic);
  return usual ? remount(changed, id, usual) : changed;
}
