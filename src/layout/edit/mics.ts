import type { Degrees, Mm } from '../../units/quantity.ts';
import { freshName } from '../catalogue/defaults/newPiece.ts';
import type { Id } from '../fields.ts';
import { type Layout, layoutSchema } from '../layout.ts';
import { clipPlaceAt } from '../mics/clipPlace.ts';
import { type Mic, micSchema } from '../mics/mic.ts';
import type { ClipMount, Mount, StandClass, StandMount } from '../mics/mount.ts';
import { isDrum } from '../pieces/piece.ts';
import { mostEntries } from '../schema/listLimit.ts';
import { changeMic, heardOnce, refersWell } from './change.ts';
import { freshId } from './ids.ts';
import { withoutLostChannels } from './patch.ts';
import type { Spot } from './pieces.ts';
import { tidy, tidyAzimuth, tidySpot } from './tidy.ts';

const MOST_MICS = mostEntries(layoutSchema.shape.mics);

/**
 * A layout with one more mic, the last of its mics; it gets a fresh id when its own is taken. Without effect: one mic too
 * many, or one whose class, drum or kick is not there.
 */
export function addMic(layout: Layout, mic: Mic): Layout {
  const known = heardOnce(layout, mic);
  if (
    layout.mics.length >= MOST_MICS ||
    !refersWell(layout, known) ||
    !micSchema.safeParse(known).success
  ) {
    return layout;
  }
  return { ...layout, mics: [...layout.mics, { ...known, id: freshId(layout, mic.id) }] };
}

/** A layout without one mic and its channels. */
export function deleteMic(layout: Layout, id: Id): Layout {
  const mics = layout.mics.filter((mic) => mic.id !== id);
  return mics.length === layout.mics.length ? layout : withoutLostChannels({ ...layout, mics });
}

/** How far a copied mic stands from the first: round the rim, or on the plan. */
const COPY_ANGLE: Degrees = 30;
const COPY_STEP: Mm = 150;

/** A copy of a mic beside it, not plugged; it is the last mic. */
export function duplicateMic(layout: Layout, id: Id): Layout {
  const mic = layout.mics.find((entry) => entry.id === id);
  if (!mic) return layout;
  const name = freshName(layout, mic.name);
  const added = addMic(layout, { ...mic, name, input: null });
  const copy = added.mics.at(-1);
  if (added === layout || !copy) return layout;
  return mic.mount.kind === 'clip'
    ? changeClip(added, copy.id, { angle: mic.mount.angle + COPY_ANGLE })
    : moveMic(added, copy.id, { x: COPY_STEP, y: 0 });
}

export const renameMic = (layout: Layout, id: Id, name: string): Layout =>
  changeMic(layout, id, (mic) => ({ ...mic, name }));

/** Gives a mic another class; its mount and its tip stay. */
export const setMicClass = (layout: Layout, id: Id, micClass: Id): Layout =>
  changeMic(layout, id, (mic) => ({ ...mic, micClass }));

/** Sets what a mic hears, its own source first. */
export const setHears = (layout: Layout, id: Id, hears: readonly Id[]): Layout =>
  changeMic(layout, id, (mic) => ({ ...mic, hears: [...hears] }));

/** Plugs a mic into a numbered input of the box, or out (null). */
export const setInput = (layout: Layout, id: Id, input: number | null): Layout =>
  changeMic(layout, id, (mic) => ({ ...mic, input }));

/**
 * Puts the front of a mic at a point (kit frame). A stand's base stays and its boom follows; a clip goes round its rim and in
 * or out to where that is the nearest; without z the mic keeps its height (a clip: above the head). A plate in a kick stays.
 */
export const moveMicTip = (layout: Layout, id: Id, to: Spot & { readonly z?: Mm }): Layout =>
  changeMount(layout, id, (mount) => {
    switch (mount.kind) {
      case 'stand': {
        const z = tidy(to.z ?? mount.tip.z);
        return { ...mount, tip: { ...tidySpot(to.x, to.y), z } };
      }
      case 'clip': {
        const drum = layout.pieces.find((piece) => piece.id === mount.drum);
        if (!(drum && isDrum(drum))) return mount;
        const place = clipPlaceAt(drum, to, mount.height);
        const [reach, height] = [tidy(place.reach), tidy(place.height)];
        return { ...mount, angle: tidyAzimuth(place.angle), reach, height };
      }
      case 'plateOnDeck':
        return { ...mount, ...tidySpot(to.x, to.y) };
      case 'plateInKick':
        return mount;
    }
  });

/** Moves the base of a mic's stand; the tip stays and the boom follows. */
export const moveMicBase = (layout: Layout, id: Id, to: Spot): Layout =>
  changeStand(layout, id, (mount) => ({ ...mount, base: tidySpot(to.x, to.y) }));

/** Moves a whole mic on the plan: the stand with its tip, or the plate. A mic that belongs to a piece stays. */
export const moveMic = (layout: Layout, id: Id, by: Spot): Layout =>
  changeMount(layout, id, (mount) => {
    if (mount.kind === 'stand') {
      const { base, tip } = mount;
      return {
        ...mount,
        base: tidySpot(base.x + by.x, base.y + by.y),
        tip: { ...tip, ...tidySpot(tip.x + by.x, tip.y + by.y) },
      };
    }
    return mount.kind === 'plateOnDeck'
      ? { ...mount, ...tidySpot(mount.x + by.x, mount.y + by.y) }
      : mount;
  });

/** Points a mic: azimuth on the plan and pitch above the level. A clip takes only the pitch, below its head; a plate only the azimuth. */
export const aimMic = (
  layout: Layout,
  id: Id,
  aim: { readonly azimuth?: Degrees; readonly pitch?: Degrees },
): Layout =>
  changeMount(layout, id, (mount) => {
    switch (mount.kind) {
      case 'stand':
        return {
          ...mount,
          azimuth: tidyAzimuth(aim.azimuth ?? mount.azimuth),
          pitch: tidy(aim.pitch ?? mount.pitch),
        };
      case 'clip':
        return { ...mount, pitch: tidy(aim.pitch ?? mount.pitch) };
      case 'plateOnDeck':
        return { ...mount, turn: tidyAzimuth(aim.azimuth ?? mount.turn) };
      case 'plateInKick':
        return mount;
    }
  });

/** Changes where a clip sits and of what it is made. */
export const changeClip = (
  layout: Layout,
  id: Id,
  patch: Partial<Omit<ClipMount, 'kind'>>,
): Layout =>
  changeMount(layout, id, (mount) => {
    if (mount.kind !== 'clip') return mount;
    const next = { ...mount, ...patch };
    return { ...next, angle: tidyAzimuth(next.angle) };
  });

/** Turns the feet of a mic's stand. */
export const turnMicStand = (layout: Layout, id: Id, turn: Degrees): Layout =>
  changeStand(layout, id, (mount) => ({ ...mount, turn: tidyAzimuth(turn) }));

/** Sets the height of a boom's clutch; null lets the boom lie most nearly level. */
export const setMast = (layout: Layout, id: Id, mast: Mm | null): Layout =>
  changeStand(layout, id, (mount) => ({ ...mount, mast }));

/** Puts a mic on another class of stand; base and tip stay. */
export const setStandClass = (layout: Layout, id: Id, stand: StandClass): Layout =>
  changeStand(layout, id, (mount) => ({ ...mount, stand }));

/** How far behind the front head a plate lies in its kick. */
export const setPlateDepth = (layout: Layout, id: Id, depth: Mm): Layout =>
  changeMount(layout, id, (mount) => (mount.kind === 'plateInKick' ? { ...mount, depth } : mount));

/** A layout with the mount of one mic changed. */
export const changeMount = (layout: Layout, id: Id, change: (mount: Mount) => Mount): Layout =>
  changeMic(layout, id, (mic) => ({ ...mic, mount: change(mic.mount) }));

const changeStand = (layout: Layout, id: Id, change: (mount: StandMount) => StandMount): Layout =>
  changeMount(layout, id, (mount) => (mount.kind === 'stand' ? change(mount) : mount));
