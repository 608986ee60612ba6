import type { Vec2 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import type { StandMount } from '../../layout/mics/mount.ts';
import { isDrum, isStruck, type Piece, type Struck } from '../../layout/pieces/piece.ts';
import { BOX_DEPTH } from '../../rig/boxShape.ts';
import { toKit } from '../../rig/deckFrame.ts';
import type { PlacedMic, PlacedPiece, Rig } from '../../rig/placed.ts';
import type { Selection } from '../../session/selection.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import type { ScreenPoint } from '../view/view.ts';
import type { Drag, Hold } from './drag.ts';
import { dragClip } from './dragClip.ts';
import { dragHub, dragPieceFeet, dragTripod } from './dragFeet.ts';
import { dragLean, PX_PER_DEGREE } from './dragLean.ts';
import { dragAim, dragBase, dragPlate, dragTip } from './dragMic.ts';
import { dragTurn } from './dragPiece.ts';
import { dragBoxTurn, dragKit, dragKitTurn } from './dragStage.ts';

/** What a handle does; its glyph says so. */
export type HandleKind = 'move' | 'turn' | 'lean' | 'feet' | 'aim' | 'slide' | 'raise';

/** Something of the selected thing that can be taken hold of by itself. */
export interface Handle {
  readonly kind: HandleKind;
  /** What it belongs to on the screen; a thin line leads there. */
  readonly anchor: ScreenPoint;
  /** Where it is drawn and met. */
  readonly at: ScreenPoint;
  start(hold: Hold): Drag;
}

/** Free px between a thing's edge and a handle outside it. */
const OUT = 34;

/** The handles of what is selected, none over another (rule H1: middles at least 44 px apart). */
export function handlesOf(
  layout: Layout,
  rig: Rig,
  selection: Selection | null,
  kitView: KitView,
): readonly Handle[] {
  switch (selection?.kind) {
    case 'piece': {
      const placed = rig.pieces.find(({ piece }) => piece.id === selection.id);
      return placed ? apart(pieceHandles(placed, kitView), middleOf(placed.piece, kitView)) : [];
    }
    case 'mic': {
      const placed = rig.mics.find(({ mic }) => mic.id === selection.id);
      return placed ? apart(micHandles(placed, layout, kitView), null) : [];
    }
    case 'box':
      return boxHandles(layout, kitView);
    case 'deck':
      return kitHandles(layout, kitView);
    default:
      return [];
  }
}

const middleOf = (piece: Piece, kitView: KitView): ScreenPoint =>
  kitToScreen(kitView, piece.kind === 'throne' ? { x: 0, y: 0 } : piece);

/** A point `px` beyond a spot in a direction of the plan (degrees), on the screen. */
function beyond(kitView: KitView, spot: Vec2, azimuth: number, px: number): ScreenPoint {
  const mm = px / kitView.view.scale;
  return kitToScreen(kitView, {
    x: spot.x + mm * cosDeg(azimuth),
    y: spot.y + mm * sinDeg(azimuth),
  });
}

function pieceHandles(placed: PlacedPiece, kitView: KitView): readonly Handle[] {
  const { piece } = placed;
  if (piece.kind === 'kick' || piece.kind === 'pedal') return [turnHandle(piece, kitView)];
  const feet = feetHandles(placed, kitView);
  return isStruck(piece) ? [leanHandle(piece, kitView), ...feet] : feet;
}

function turnHandle(piece: Extract<Piece, { kind: 'kick' | 'pedal' }>, kitView: KitView): Handle {
  const length = piece.kind === 'kick' ? piece.depth / 2 + piece.rim.height : piece.length;
  const px = length * kitView.view.scale;
  return {
    kind: 'turn',
    anchor: beyond(kitView, piece, piece.turn, px),
    at: beyond(kitView, piece, piece.turn, px + OUT),
    start: (hold) => dragTurn(piece, hold),
  };
}

function leanHandle(piece: Struck, kitView: KitView): Handle {
  const edge = (piece.diameter / 2) * kitView.view.scale;
  return {
    kind: 'lean',
    anchor: beyond(kitView, piece, piece.tiltToward, edge * cosDeg(piece.tilt)),
    at: beyond(kitView, piece, piece.tiltToward, edge + OUT - 8 + piece.tilt * PX_PER_DEGREE),
    start: (hold) => dragLean(piece, hold),
  };
}

function feetHandles({ piece, footprints }: PlacedPiece, kitView: KitView): readonly Handle[] {
  const turn = feetTurn(piece);
  if (turn === undefined) return [];
  const [first] = footprints;
  if (!first) return [];
  const onShell = 'support' in piece && piece.support.kind === 'legs';
  const centre = piece.kind === 'throne' ? { x: 0, y: 0 } : piece;
  const hub = onShell ? { x: centre.x, y: centre.y } : first.hub;
  const foot = onShell ? first.hub : (first.feet[0] ?? first.hub);
  const away = (Math.atan2(foot.y - hub.y, foot.x - hub.x) * 180) / Math.PI;
  const feet: Handle = {
    kind: 'feet',
    anchor: kitToScreen(kitView, foot),
    at: beyond(kitView, foot, away, OUT - 16),
    start: (hold) => dragPieceFeet(piece, { hub, turn }, hold),
  };
  if (onShell || piece.kind === 'throne') return [feet];
  const at = kitToScreen(kitView, hub);
  return [{ kind: 'move', anchor: at, at, start: (hold) => dragHub(piece, hold) }, feet];
}

function feetTurn(piece: Piece): number | undefined {
  if (piece.kind === 'throne') return piece.turn;
  if (!('support' in piece) || piece.support.kind === 'held') return undefined;
  return piece.support.turn;
}

function micHandles(placed: PlacedMic, layout: Layout, kitView: KitView): readonly Handle[] {
  const { mic, tip } = placed;
  const { mount } = mic;
  const at = kitToScreen(kitView, tip);
  const move: Handle = { kind: 'move', anchor: at, at, start: (hold) => dragTip(placed, hold) };
  switch (mount.kind) {
    case 'clip': {
      const drum = layout.pieces.find(({ id }) => id === mount.drum);
      if (!drum || !isDrum(drum)) return [];
      return [{ ...move, start: (hold) => dragClip({ placed, mount, drum }, hold) }];
    }
    case 'stand':
      return [move, ...standHandles(placed, mount, kitView)];
    case 'plateOnDeck':
      return [move, aimHandle(placed, mount.turn, kitView)];
    case 'plateInKick': {
      const kick = layout.pieces.find(({ id }) => id === mount.kick);
      if (kick?.kind !== 'kick') return [];
      const start = (hold: Hold): Drag => dragPlate(mic, mount.depth, kick, hold);
      return [{ kind: 'slide', anchor: at, at, start }];
    }
  }
}

function standHandles(placed: PlacedMic, mount: StandMount, kitView: KitView): readonly Handle[] {
  const { mic, stand } = placed;
  const base = kitToScreen(kitView, mount.base);
  const handles: Handle[] = [
    { kind: 'move', anchor: base, at: base, start: (hold) => dragBase(mic, mount, hold) },
    aimHandle(placed, mount.azimuth, kitView),
  ];
  const foot = stand?.footprint.feet[0];
  if (foot) {
    handles.push({
      kind: 'feet',
      anchor: kitToScreen(kitView, foot),
      at: beyond(kitView, foot, mount.turn, OUT - 16),
      start: (hold) => dragTripod(mic, mount, hold),
    });
  }
  return handles;
}

const aimHandle = (placed: PlacedMic, azimuth: number, kitView: KitView): Handle => ({
  kind: 'aim',
  anchor: kitToScreen(kitView, placed.tip),
  at: beyond(kitView, placed.tip, azimuth, 2 * OUT),
  start: (hold) => dragAim(placed, azimuth, hold),
});

function boxHandles({ box, deck }: Layout, kitView: KitView): readonly Handle[] {
  const middle = toKit(deck, box);
  const azimuth = box.turn - deck.kit.turn;
  const edge = (BOX_DEPTH / 2) * kitView.view.scale;
  return [
    {
      kind: 'turn',
      anchor: beyond(kitView, middle, azimuth, edge),
      at: beyond(kitView, middle, azimuth, edge + OUT),
      start: (hold) => dragBoxTurn(box, hold),
    },
  ];
}

function kitHandles({ deck }: Layout, kitView: KitView): readonly Handle[] {
  const at = kitToScreen(kitView, { x: 0, y: 0 });
  return [
    { kind: 'move', anchor: at, at, start: (hold) => dragKit(deck, hold) },
    {
      kind: 'turn',
      anchor: at,
      at: beyond(kitView, { x: 0, y: 0 }, 90, 90),
      start: (hold) => dragKitTurn(deck, hold),
    },
  ];
}

const CLEAR = 44;

/**
 * Moves handles that come too near to earlier ones (or to the middle of a piece, by which it is dragged) outward along their
 * own direction until they are free.
 */
export function apart(handles: readonly Handle[], middle: ScreenPoint | null): readonly Handle[] {
  const taken: ScreenPoint[] = middle ? [middle] : [];
  return handles.map((handle) => {
    const from = taken[0] ?? handle.anchor;
    const at = freeSpot(handle.at, awayFrom(handle, from), taken);
    taken.push(at);
    return at === handle.at ? handle : { ...handle, at };
  });
}

function awayFrom({ at, anchor }: Handle, middle: ScreenPoint): ScreenPoint {
  for (const from of [anchor, middle]) {
    const [x, y] = [at.x - from.x, at.y - from.y];
    const size = Math.hypot(x, y);
    if (size > 1) return { x: x / size, y: y / size };
  }
  return { x: 0, y: 1 };
}

function freeSpot(at: ScreenPoint, way: ScreenPoint, taken: readonly ScreenPoint[]): ScreenPoint {
  for (let out = 0; out <= 6 * CLEAR; out += 4) {
    const spot = { x: at.x + way.x * out, y: at.y + way.y * out };
    if (taken.every(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) >= CLEAR)) {
      return out === 0 ? at : spot;
    }
  }
  return at;
}
