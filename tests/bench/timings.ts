import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { isDrum, isStruck, type Piece } from '../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { floorOf } from '../../src/report/floor.ts';
import type { Report } from '../../src/report/report.ts';
import { ringOf } from '../../src/report/ring.ts';
import { forbiddenZone } from '../../src/report/zone.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { denseSampling, sampleMic } from './denseSampling.ts';
import { measure, measureRatio, spread, type Times } from './measure.ts';

/** The starting kit with the most pieces and mics. */
export const largest = STARTING_KITS.map((kit) => kit.make(kit.key)).reduce((a, b) =>
  a.pieces.length + a.mics.length >= b.pieces.length + b.mics.length ? a : b,
);

/** Sums up what was computed, outside the timed loops: the same in every run. */
export class Checksum {
  total = 0;

  readonly add = (...values: readonly number[]): void => {
    for (const value of values) if (Number.isFinite(value)) this.total += value;
  };

  readonly addReports = (reports: readonly Report[]): void => {
    for (const { clearances, findings, totals } of reports) {
      this.add(findings.length, totals.cable, ...clearances.map(({ clearance }) => clearance));
    }
  };
}

/**
 * A full analysis soon after a start, and later. In the first hundred runs the engine's own compiler takes about as much time of the processors as the
 * analysis does: what is measured then depends on whether the machine has one to spare for it.
 */
export const timesOfFullAnalysis = (checksum: Checksum) => ({
  atFirst: timesOfAnalyses(20, checksum),
  later: timesOfAnalyses(120, checksum),
});

/** Equal but new data, and a new analyst for it: nothing known from before can be used. */
function timesOfAnalyses(warmUp: number, checksum: Checksum): Times {
  const runs = 40;
  const kits = Array.from({ length: warmUp + runs }, () => structuredClone(largest));
  let next = 0;
  const analyse = (): Report => createAnalyst()(kits[next++] ?? largest);
  return measure({ warmUp, runs }, analyse, checksum.addReports);
}

/** How often the same thing is moved before it is put back and the next one is moved. */
const DRAG = 8;

/** One mic dragged by at most 20 mm (a clip round its rim by at most 20 degrees). */
export function withMovedMic(layout: Layout, run: number): Layout {
  const by = 20 * spread(run);
  const move = (mic: Mic): Mic => {
    const { mount } = mic;
    switch (mount.kind) {
      case 'clip':
        return { ...mic, mount: { ...mount, angle: mount.angle + by } };
      case 'plateInKick':
        return { ...mic, mount: { ...mount, depth: mount.depth + by } };
      case 'plateOnDeck':
        return { ...mic, mount: { ...mount, x: mount.x + by } };
      case 'stand':
        return { ...mic, mount: { ...mount, tip: { ...mount.tip, x: mount.tip.x + by } } };
    }
  };
  const moved = layout.mics[Math.floor(run / DRAG) % layout.mics.length];
  return { ...layout, mics: layout.mics.map((mic) => (mic === moved ? move(mic) : mic)) };
}

/** One drum dragged by at most 20 mm, with the mics clipped to it. */
export function withMovedDrum(layout: Layout, run: number): Layout {
  const drums = layout.pieces.filter(isDrum);
  const moved = drums[Math.floor(run / DRAG) % drums.length];
  const move = (piece: Piece): Piece =>
    piece === moved && isDrum(piece) ? { ...piece, x: piece.x + 20 * spread(run) } : piece;
  return { ...layout, pieces: layout.pieces.map(move) };
}

/** Times of an analyst that knows the kit and sees it with one change after the other: dragged, as the session asks then, or each at rest. */
export function timesOfChange(
  change: (layout: Layout, run: number) => Layout,
  runs: number,
  inHurry: boolean,
  checksum: Checksum,
): Times {
  const analyse = createAnalyst();
  const layout = structuredClone(largest);
  analyse(layout);
  const changed = Array.from({ length: runs }, (_, run) => change(layout, run));
  const work = (run: number): Report => analyse(changed[run] ?? layout, inHurry);
  return measure({ warmUp: runs, runs }, work, checksum.addReports);
}

/** Every mic four times over. */
export const fourfoldMics: Layout = {
  ...largest,
  mics: [0, 1, 2, 3].flatMap((copy) =>
    largest.mics.map((mic) => ({ ...mic, id: `${mic.id.slice(0, 36)}-${copy}` })),
  ),
};

/** Every struck piece twice, the second a little aside. */
export const twofoldPieces: Layout = {
  ...largest,
  pieces: largest.pieces.flatMap((piece): Piece[] =>
    isStruck(piece)
      ? [piece, { ...piece, id: `${piece.id.slice(0, 36)}-2`, x: piece.x + 30, y: piece.y + 40 }]
      : [piece],
  ),
};

/** The index of the moves' swept volume: built once per change of kit or player. */
export const timesOfIndex = ({ player, pieces }: Layout, checksum: Checksum): Times =>
  measure(
    { warmUp: 15, runs: 30 },
    () => motionOf(player, pieces),
    (motions) => checksum.add(...motions.map(({ swept }) => swept.moves.length)),
  );

/** How many times as long the index takes for the pieces of another kit. */
export const ratioOfIndex = (layout: Layout, checksum: Checksum): number =>
  measureRatio(
    { warmUp: 15, runs: 30 },
    () => motionOf(layout.player, layout.pieces),
    () => motionOf(largest.player, largest.pieces),
    (motions) => checksum.add(...motions.map(({ swept }) => swept.moves.length)),
  );

function clearancesOf(layout: Layout): () => number[] {
  const motion = motionOf(layout.player, layout.pieces);
  const { mics } = buildRig(layout);
  return () => mics.map((placed) => reachOf(motion, placed).clearance);
}

/** Clearances of all mics with the index given. */
export const timesOfClearances = (layout: Layout, checksum: Checksum): Times =>
  measure({ warmUp: 15, runs: 30 }, clearancesOf(layout), (results) =>
    checksum.add(...results.flat()),
  );

/** How many times as long they take for the mics of another kit. */
export const ratioOfClearances = (layout: Layout, checksum: Checksum): number =>
  measureRatio({ warmUp: 15, runs: 30 }, clearancesOf(layout), clearancesOf(largest), (results) =>
    checksum.add(...results.flat()),
  );

/** Clearance of one mic with the index given, mic by mic. */
export function timesOfOneClearance(checksum: Checksum): Times {
  const motion = motionOf(largest.player, largest.pieces);
  const { mics } = buildRig(largest);
  return measure(
    { warmUp: 20 * mics.length, runs: 10 * mics.length },
    (run) =>
      mics
        .slice(run % mics.length, (run % mics.length) + 1)
        .map((mic) => reachOf(motion, mic).clearance),
    (results) => checksum.add(...results.flat()),
  );
}

/** Rim rings of all clips, zones of all mics and the stick floor, with the index given. */
export function timesOfFields(checksum: Checksum) {
  const motion = motionOf(largest.player, largest.pieces);
  const clips = largest.mics.filter(({ mount }) => mount.kind === 'clip');
  const pick = (mics: readonly Mic[], run: number): string => mics[run % mics.length]?.id ?? '';
  const times = { warmUp: 20, runs: 40 };
  return {
    rimRing: measure(
      times,
      (run) => ringOf(largest, pick(clips, run), motion),
      (rings) => checksum.add(...rings.map((ring) => ring?.arcs.length ?? 0)),
    ),
    zone: measure(
      times,
      (run) => forbiddenZone(largest, pick(largest.mics, run), motion),
      (zones) => checksum.add(...zones.map((zone) => zone?.rings.flat().length ?? 0)),
    ),
    stickFloor: measure(
      { warmUp: 5, runs: 15 },
      () => floorOf(largest, motion),
      (floors) => checksum.add(...floors.map(({ lowest }) => lowest)),
    ),
  };
}

/** Dense sampling of everything, and of one mic with the positions known; what it finds is held beside the engine's. */
export function timesOfSampling(checksum: Checksum) {
  const { mics } = buildRig(largest);
  const motion = motionOf(largest.player, largest.pieces);
  const exact = mics.map((placed) => reachOf(motion, placed).clearance);
  const known = denseSampling(largest);
  let mostAbove = Number.NEGATIVE_INFINITY;
  let leastAbove = Number.POSITIVE_INFINITY;
  const allMics = measure(
    { warmUp: 1, runs: 3 },
    () => {
      const dense = denseSampling(largest);
      return mics.map((placed) => sampleMic(dense, placed));
    },
    (results) => {
      const above = results.flatMap((found) => found.map((value, k) => value - (exact[k] ?? 0)));
      mostAbove = Math.max(...above);
      leastAbove = Math.min(...above);
      checksum.add(...results.flat());
    },
  );
  const oneMic = measure(
    { warmUp: 1, runs: mics.length },
    (run) => mics.slice(run, run + 1).map((placed) => sampleMic(known, placed)),
    (results) => checksum.add(...results.flat()),
  );
  return {
    allMics,
    oneMic,
    moves: known.moves.length,
    samples: known.samples,
    mostAbove,
    leastAbove,
  };
}
