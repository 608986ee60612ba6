import { againstPlayerIn } from '../../src/clearance/againstPlayer.ts';
import { type Motion, reachOf } from '../../src/clearance/micClearance.ts';
import { UNBOUNDED } from '../../src/clearance/searchBounds.ts';
import type { Vec3 } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { ClipMount, Mount, StandMount } from '../../src/layout/mics/mount.ts';
import type { Drum } from '../../src/layout/pieces/drum.ts';
import { isDrum, isStruck, type Struck } from '../../src/layout/pieces/piece.ts';
import type { PlacedMic, Rig } from '../../src/rig/placed.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { findStanding } from '../../src/rig/standing/findStanding.ts';
import { tippingOf } from '../../src/rig/tipping.ts';

/**
 * A second way to a clear spot: every place of a grid, the cheapest first, each measured by the engine. It knows the rules N1 to N4, N8 and N9 from their
 * words only and shares no code with the search: no boxes, no bounds, no lists.
 */
export interface GridScene {
  readonly layout: Layout;
  readonly rig: Rig;
  readonly motion: Motion;
}

export interface GridSpot {
  readonly mount: Mount;
  readonly cost: number;
  readonly clearance: number;
}

const DEG = Math.PI / 180;
const minus = (p: Vec3, q: Vec3): Vec3 => ({ x: p.x - q.x, y: p.y - q.y, z: p.z - q.z });
const times = (p: Vec3, q: Vec3): number => p.x * q.x + p.y * q.y + p.z * q.z;
const size = (p: Vec3): number => Math.sqrt(times(p, p));
const on = (from: Vec3, way: Vec3, far: number): Vec3 => ({
  x: from.x + far * way.x,
  y: from.y + far * way.y,
  z: from.z + far * way.z,
});

/** Rule N3: the mm of the tip, 2 mm a degree of aim, 0.3 of the mm of the base. */
export function gridCost(now: PlacedMic, then: PlacedMic): number {
  const cos = Math.max(-1, Math.min(1, times(now.axis, then.axis)));
  const base = now.stand?.footprint.hub;
  const hub = then.stand?.footprint.hub;
  const gone = base && hub ? Math.hypot(hub.x - base.x, hub.y - base.y) : 0;
  return size(minus(now.tip, then.tip)) + (2 * Math.acos(cos)) / DEG + 0.3 * gone;
}

/** Where an axis meets a head or cymbal, from its middle, and how far ahead; undefined beside it or behind. */
export function metAt(tip: Vec3, axis: Vec3, piece: Struck): Vec3 | undefined {
  const [flat, up] = [Math.sin(piece.tilt * DEG), Math.cos(piece.tilt * DEG)];
  const toward = piece.tiltToward * DEG;
  const normal = { x: flat * Math.cos(toward), y: flat * Math.sin(toward), z: up };
  const slope = times(axis, normal);
  if (Math.abs(slope) < 1e-9) return undefined;
  const ahead = times(minus(piece, tip), normal) / slope;
  const met = on(tip, axis, ahead);
  const isOn = size(minus(met, piece)) <= piece.diameter / 2 + 1e-6;
  return isOn && ahead >= -1e-6 ? met : undefined;
}

const struckPiece = (layout: Layout, id: string | undefined): Struck | undefined =>
  layout.pieces.find((piece): piece is Struck => piece.id === id && isStruck(piece));

/** Every whole number of strides up to `most`, both ways. */
const strides = (stride: number, most: number): readonly number[] => {
  const count = Math.floor(most / stride);
  return Array.from({ length: 2 * count + 1 }, (_, k) => (k - count) * stride);
};

/** A grid: its stride and how far it goes, mm and degrees. */
interface Grid {
  readonly mm: readonly [stride: number, most: number];
  readonly degrees: readonly [stride: number, most: number];
}
/** Fine near the mic, coarser all over. */
export const GRIDS: readonly Grid[] = [
  { mm: [6, 24], degrees: [3, 12] },
  { mm: [15, 60], degrees: [6, 36] },
  { mm: [30, 240], degrees: [15, 180] },
];

/**
 * Rule N1 and N2, clips: any angle, reach, height and pitch within their limits whose axis meets the head where it did before; not farther in than 75 mm or
 * lower than the room that is `asked` for over the head, but where the mic is already; a mic that stands in a piece is nowhere already.
 */
function clipMounts(
  mount: ClipMount,
  { mm, degrees }: Grid,
  { isSomewhere, asked }: { readonly isSomewhere: boolean; readonly asked: number },
): readonly Mount[] {
  const within = (value: number, [least, most]: readonly [number, number]): boolean =>
    value >= least && value <= most;
  const { angle, reach, height, pitch } = mount;
  const farthest = isSomewhere ? Math.max(75, reach) : 75;
  const lowest = isSomewhere ? Math.min(asked, height) : 20;
  return strides(...degrees).flatMap((turn) =>
    strides(...mm).flatMap((along) =>
      strides(...mm).flatMap((up) =>
        strides(degrees[0], Math.min(degrees[1], 60)).flatMap((nod) =>
          within(reach + along, [-60, farthest]) &&
          within(height + up, [lowest, 300]) &&
          within(pitch + nod, [-10, 90])
            ? [
                {
                  ...mount,
                  angle: (angle + turn + 720) % 360,
                  reach: reach + along,
                  height: height + up,
                  pitch: pitch + nod,
                },
              ]
            : [],
        ),
      ),
    ),
  );
}

/** Rule N1 and N2, stands: the tip anywhere, looking at what it was aimed at; a boom's base turned about the present tip, too. */
function standMounts(
  mount: StandMount,
  now: PlacedMic,
  { grid, layout }: { readonly grid: Grid; readonly layout: Layout },
): readonly Mount[] {
  const { mm, degrees } = grid;
  const hasBoom = mount.stand !== 'roundStraight';
  const aim = aimOf(now, layout);
  const turns = hasBoom ? strides(degrees[0] * 2, degrees[1]) : [0];
  return strides(...mm).flatMap((x) =>
    strides(...mm).flatMap((y) =>
      strides(...mm).flatMap((z): readonly Mount[] => {
        const tip = on(mount.tip, { x, y, z }, 1);
        if (tip.z < 0) return [];
        const way = aim && minus(aim, tip);
        const isMoved = x !== 0 || y !== 0 || z !== 0;
        const looking =
          way && isMoved
            ? {
                azimuth: ((Math.atan2(way.y, way.x) / DEG + 360) % 360) + 0,
                pitch: Math.atan2(way.z, Math.hypot(way.x, way.y)) / DEG,
              }
            : {};
        return turns.map((turn) => turned({ ...mount, tip, ...looking }, mount, turn));
      }),
    ),
  );
}

function turned(moved: StandMount, { base, tip }: StandMount, turn: number): StandMount {
  if (turn === 0) return moved;
  const [cos, sin] = [Math.cos(turn * DEG), Math.sin(turn * DEG)];
  const [x, y] = [base.x - tip.x, base.y - tip.y];
  return {
    ...moved,
    base: { x: tip.x + cos * x - sin * y, y: tip.y + sin * x + cos * y },
    turn: (moved.turn + turn + 360) % 360,
  };
}

/** What a mic on a stand is aimed at; undefined for one that looks within 15 degrees of straight up or down, which keeps its direction. */
export function aimOf({ mic, tip, axis }: PlacedMic, layout: Layout): Vec3 | undefined {
  if (Math.abs(axis.z) > Math.cos(15 * DEG)) return undefined;
  const heard = layout.pieces.find(({ id }) => id === mic.hears[0]);
  if (!heard || heard.kind === 'throne') return undefined;
  const met = isStruck(heard) ? metAt(tip, axis, heard) : undefined;
  if (met) return size(minus(met, tip)) >= 20 ? met : undefined;
  const middle = { x: heard.x, y: heard.y, z: heard.kind === 'pedal' ? 0 : heard.z };
  const ahead = times(minus(middle, tip), axis);
  return ahead >= 20 ? on(tip, axis, ahead) : undefined;
}

/** Rules N1 and N2: whether a mic there keeps its aim and is held within its stand's reach. */
export function keepsAim(layout: Layout, now: PlacedMic, then: PlacedMic): boolean {
  if ((then.stand?.beyondReach ?? 0) > 0) return false;
  const { mount, hears } = now.mic;
  const isSteep = Math.abs(now.axis.z) > Math.cos(15 * DEG);
  if (mount.kind === 'stand' && !isSteep) {
    const aim = aimOf(now, layout);
    if (!aim) return times(now.axis, then.axis) > 1 - 1e-9;
    const way = minus(aim, then.tip);
    return times(then.axis, way) > (1 - 1e-9) * size(way);
  }
  const piece = struckPiece(layout, mount.kind === 'clip' ? mount.drum : hears[0]);
  const wasOn = piece !== undefined && metAt(now.tip, now.axis, piece) !== undefined;
  return !(piece && wasOn) || metAt(then.tip, then.axis, piece) !== undefined;
}

/** What a mic stands in or against when it is placed so, and how deep. */
function overlaps({ layout, rig }: GridScene, placed: PlacedMic): ReadonlyMap<string, number> {
  const mics = rig.mics.map((each) => (each.mic.id === placed.mic.id ? placed : each));
  return new Map(
    [...findStanding({ ...rig, mics }, layout.deck), ...againstPlayerIn(layout)(placed)]
      .filter(({ about }) => about.includes(placed.mic.id))
      .map(({ code, about, overlap }) => [`${code} ${about}`, overlap]),
  );
}

const IN_PIECE = /^(mic-in-shell|boom-through-piece) /;
/** What no spot has, whatever it was before. */
const NOWHERE =
  /^(mic-in-shell|boom-through-piece|mic-against-stand|mic-against-mic|mic-in-player|mic-near-player|mic-in-pedal) /;
export const isInPiece = (scene: GridScene, placed: PlacedMic): boolean =>
  [...overlaps(scene, placed).keys()].some((key) => IN_PIECE.test(key));

/** Rule N8: how much less than it should a mic have over some head, mm; with no place already where it stands in a piece. */
export function missingOverHeads(scene: GridScene, now: PlacedMic, then: PlacedMic): number {
  const missing = scene.layout.pieces
    .filter(isDrum)
    .map((drum) => missingOver(then, drum, askedOver(scene, now, drum)));
  return Math.max(0, ...missing);
}

/** Rule N8: the room that is asked for over a head: 20 mm, or what a mic has that stands in no piece. */
export function askedOver(scene: GridScene, now: PlacedMic, drum: Drum): number {
  if (missingOver(now, drum, 20) <= 0 || isInPiece(scene, now)) return 20;
  const heights = now.solids
    .filter(({ part }) => part !== 'clipArm')
    .flatMap(({ capsule: { a, b, radius } }) =>
      Array.from({ length: AXIS_PLACES + 1 }, (_, k) => {
        const { over, aside } = fromHead(on(a, minus(b, a), k / AXIS_PLACES), drum);
        const isBelow = over + drum.depth + radius <= 0;
        return aside < drum.diameter / 2 + radius && !isBelow ? over - radius : 20;
      }),
    );
  const least = Math.min(20, ...heights);
  return least < 0 ? 20 : least;
}

const AXIS_PLACES = 20_000;

/** Over a head by less than this, beside it or under it: what of a mic is farthest from all three, by looking ever closer where it was so far. */
function missingOver({ solids }: PlacedMic, drum: Drum, room: number): number {
  const missing = solids.map(({ part, capsule: { a, b, radius } }) => {
    if (part === 'clipArm') return 0;
    const at = (t: number): number => {
      const { over, aside } = fromHead(on(a, minus(b, a), t), drum);
      return Math.min(
        room + radius - over,
        drum.diameter / 2 + radius - aside,
        over + drum.depth + radius,
      );
    };
    let [best, step] = [0.5, 0.5];
    for (let look = 0; look < 8; look += 1) {
      const places = Array.from({ length: 17 }, (_, k) => best + ((k - 8) / 8) * step);
      const inside = places.filter((t) => t >= 0 && t <= 1);
      best = inside.reduce((p, q) => (at(q) > at(p) ? q : p), best);
      step /= 4;
    }
    return at(best);
  });
  return Math.max(0, ...missing);
}

/** How far a point is over the plane of a head, and from the line through the head's middle. */
function fromHead(point: Vec3, { x, y, z, tilt, tiltToward }: Drum) {
  const [flat, toward] = [Math.sin(tilt * DEG), tiltToward * DEG];
  const normal = {
    x: flat * Math.cos(toward),
    y: flat * Math.sin(toward),
    z: Math.cos(tilt * DEG),
  };
  const from = minus(point, { x, y, z });
  const over = times(from, normal);
  return { over, aside: size(on(from, normal, -over)) };
}

/** Rules N4, N8 and N9: whether it stands in no piece, its hardware or another mic and off the player, nothing else is more in the way than before, the stand as firm as it should be, and room over heads. */
export function standsNoWorse(scene: GridScene, now: PlacedMic, then: PlacedMic) {
  if (missingOverHeads(scene, now, then) > 0.011) return false;
  const before = overlaps(scene, now);
  const worse = [...overlaps(scene, then)].some(
    ([key, depth]) => depth > (NOWHERE.test(key) ? 0 : (before.get(key) ?? 0)) + 0.2,
  );
  const firm = (placed: PlacedMic): number => tippingOf(placed)?.factor ?? Infinity;
  return !worse && firm(then) >= Math.min(1.5, firm(now));
}

/** The cheapest clear spot of the grids that costs at most `dearest` mm; undefined when they hold none. */
export function gridSpot(
  scene: GridScene,
  micId: string,
  { grids, dearest }: { readonly grids: readonly Grid[]; readonly dearest: number },
): GridSpot | undefined {
  const { layout, motion } = scene;
  const now = scene.rig.mics.find(({ mic }) => mic.id === micId);
  if (!now) throw new Error(`a mic ${micId} was expected`);
  const { mic } = now;
  const places = grids
    .flatMap((grid) => mountsOn(mic, now, { grid, scene }))
    .map((mount) => ({ mount, cost: gridCost(now, placeMic({ ...mic, mount }, layout)) }))
    .filter(({ cost }) => cost < dearest)
    .toSorted((p, q) => p.cost - q.cost);
  for (const { mount, cost } of places) {
    const then = placeMic({ ...mic, mount }, layout);
    if (!keepsAim(layout, now, then)) continue;
    const bounds = { ...UNBOUNDED, limit: layout.margin + 1, enough: layout.margin };
    if (reachOf(motion, then, bounds).clearance < layout.margin) continue;
    if (!standsNoWorse(scene, now, then)) continue;
    return { mount, cost, clearance: reachOf(motion, then).clearance };
  }
  return undefined;
}

function mountsOn(
  mic: Mic,
  now: PlacedMic,
  { grid, scene }: { readonly grid: Grid; readonly scene: GridScene },
): readonly Mount[] {
  const { mount } = mic;
  const { layout } = scene;
  if (mount.kind === 'stand') return standMounts(mount, now, { grid, layout });
  const drum = mount.kind === 'clip' && layout.pieces.find(({ id }) => id === mount.drum);
  return mount.kind === 'clip' && drum && isDrum(drum)
    ? clipMounts(mount, grid, {
        isSomewhere: !isInPiece(scene, now),
        asked: askedOver(scene, now, drum),
      })
    : [];
}
