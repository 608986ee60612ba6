import type { Vec2 } from '../../geometry/vector.ts';
import type { SeenFrom } from '../../rig/standpoint.ts';

/** A spot on the screen: px from the plan's upper left corner, y down. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
  readonly __frame?: 'screen';
}

export interface ScreenSize {
  readonly width: number;
  readonly height: number;
}

/**
 * How the deck is shown. Both ways look straight down, so one is the other turned by half a turn and never a mirror image
 * (rule V1): the house's left is the player's right.
 */
export interface View {
  readonly seenFrom: SeenFrom;
  readonly size: ScreenSize;
  /** The spot of the deck in the middle of the screen. */
  readonly centre: Vec2<'deck'>;
  /** px per mm. */
  readonly scale: number;
}

/** A rectangle of the deck, mm. */
export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly back: number;
  readonly front: number;
}

/** A layout can be 40 m wide: on the smallest drawing of a tablet it can still be seen whole. */
export const SMALLEST_SCALE = 0.008;
export const LARGEST_SCALE = 4;

/** px per mm along x and y, with the senses of the axes on the screen: house (-, +), player (+, -). */
export function axesOf(view: View): { readonly x: number; readonly y: number } {
  return view.seenFrom === 'house'
    ? { x: -view.scale, y: view.scale }
    : { x: view.scale, y: -view.scale };
}

/** Where the deck frame's origin stands on the screen. */
export function originOf(view: View): ScreenPoint {
  const axes = axesOf(view);
  return {
    x: view.size.width / 2 - axes.x * view.centre.x,
    y: view.size.height / 2 - axes.y * view.centre.y,
  };
}

export function toScreen(view: View, spot: Vec2<'deck'>): ScreenPoint {
  const axes = axesOf(view);
  const origin = originOf(view);
  return { x: origin.x + axes.x * spot.x, y: origin.y + axes.y * spot.y };
}

export function toDeck(view: View, point: ScreenPoint): Vec2<'deck'> {
  const axes = axesOf(view);
  const origin = originOf(view);
  return { x: (point.x - origin.x) / axes.x, y: (point.y - origin.y) / axes.y };
}

/** Free px along each edge of the screen. */
export interface Border {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** The view that shows all of `bounds`, as large as it can be, inside the border. */
export function fitted(view: View, bounds: Bounds, border: Border): View {
  const width = Math.max(1, bounds.right - bounds.left);
  const depth = Math.max(1, bounds.front - bounds.back);
  const scale = Math.min(
    Math.max(1, view.size.width - border.left - border.right) / width,
    Math.max(1, view.size.height - border.top - border.bottom) / depth,
  );
  const centred = {
    ...view,
    scale: clampScale(scale),
    centre: { x: (bounds.left + bounds.right) / 2, y: (bounds.back + bounds.front) / 2 },
  };
  return panned(centred, {
    x: (border.left - border.right) / 2,
    y: (border.top - border.bottom) / 2,
  });
}

/** Moves the drawing by px. */
export function panned(view: View, by: ScreenPoint): View {
  const axes = axesOf(view);
  return {
    ...view,
    centre: { x: view.centre.x - by.x / axes.x, y: view.centre.y - by.y / axes.y },
  };
}

/**
 * Zooms by a factor; the spot of the deck under `about` stays under it (rule V2). Not out beyond the scale `least`; a drawing that is smaller already
 * stays as it is (rule V3).
 */
export function zoomed(view: View, asked: number, about: ScreenPoint, least = 0): View {
  const still = toDeck(view, about);
  const factor = Math.max(asked, Math.min(1, least / view.scale));
  const closer = { ...view, scale: clampScale(view.scale * factor) };
  const moved = toScreen(closer, still);
  return panned(closer, { x: about.x - moved.x, y: about.y - moved.y });
}

/**
 * What stays where it is when buttons or keys zoom: what is selected while it is in view, else the middle of the drawing (rule V4). Fingers and
 * a wheel zoom about themselves.
 */
export function stillPoint(view: View, selected: Vec2<'deck'> | undefined): ScreenPoint {
  const { width, height } = view.size;
  const at = selected && toScreen(view, selected);
  const isInView = at && at.x >= 0 && at.y >= 0 && at.x <= width && at.y <= height;
  return isInView ? at : { x: width / 2, y: height / 2 };
}

/** The view moved as little as needed to show `spot` at least `border` px from every edge. */
export function revealing(view: View, spot: Vec2<'deck'>, border: number): View {
  const at = toScreen(view, spot);
  const inset = (value: number, size: number): number => {
    const free = Math.min(border, size / 2);
    return Math.min(Math.max(value, free), size - free) - value;
  };
  return panned(view, { x: inset(at.x, view.size.width), y: inset(at.y, view.size.height) });
}

const clampScale = (scale: number): number =>
  Math.min(LARGEST_SCALE, Math.max(SMALLEST_SCALE, scale));
