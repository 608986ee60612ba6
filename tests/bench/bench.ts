import { cpus } from 'node:os';
import { join } from 'node:path';
import { timesOfCables } from './cableTimings.ts';
import { initialJavascript } from './javascriptSize.ts';
import type { Times } from './measure.ts';
import { timesOfSound, timesOfSoundAfterMove } from './soundTimings.ts';
import {
  Checksum,
  fourfoldMics,
  largest,
  ratioOfClearances,
  ratioOfIndex,
  timesOfChange,
  timesOfClearances,
  timesOfFields,
  timesOfFullAnalysis,
  timesOfIndex,
  timesOfOneClearance,
  timesOfSampling,
  twofoldPieces,
  withMovedDrum,
  withMovedMic,
} from './timings.ts';

/**
 * Times of the analysis on the largest starting kit beside dense sampling of equal accuracy, all in one run: `npm run bench`, or
 * `npm run bench -- --json` for one JSON object, with `--browser` the drags in a browser too. All that is computed is the same in every run; only the times differ.
 */

interface Row extends Times {
  readonly name: string;
  /** The time to aim at, ms. */
  readonly aim: number | null;
}

const row = (name: string, times: Times, aim: number | null = null): Row => ({
  name,
  ...times,
  aim,
});

function benchmark() {
  const checksum = new Checksum();
  const { atFirst, later: full } = timesOfFullAnalysis(checksum);
  const movedMic = timesOfChange(withMovedMic, 128, true, checksum);
  const restedMic = timesOfChange(withMovedMic, 128, false, checksum);
  const movedDrum = timesOfChange(withMovedDrum, 64, true, checksum);
  const restedDrum = timesOfChange(withMovedDrum, 64, false, checksum);
  const index = timesOfIndex(largest, checksum);
  const clearances = timesOfClearances(largest, checksum);
  const oneClearance = timesOfOneClearance(checksum);
  const { rimRing, zone, stickFloor } = timesOfFields(checksum);
  const cables = timesOfCables(checksum);
  const sampling = timesOfSampling(checksum);
  const sound = timesOfSound(checksum);
  const soundAfterMove = timesOfSoundAfterMove(checksum);
  return {
    kit: {
      name: largest.name,
      pieces: largest.pieces.length,
      mics: largest.mics.length,
      moves: sampling.moves,
    },
    machine: `Node ${process.version}, ${cpus()[0]?.model.trim() ?? 'unknown processor'}`,
    times: [
      row('full analysis', full, 8.3),
      row('  soon after a start', atFirst, 8.3),
      row('one moved mic, dragged', movedMic, 0.3),
      row('  at rest', restedMic),
      row('one moved drum, dragged', movedDrum, 4),
      row('  at rest', restedDrum),
      row('  index of the moves', index),
      row('  clearances of all mics', clearances),
      row('  clearance of one mic', oneClearance, 0.3),
      row('rim ring', rimRing, 8),
      row('forbidden zone', zone),
      row('stick floor', stickFloor, 40),
      row('sound, all pairs', sound, 8.3),
      row('sound, one moved mic', soundAfterMove, 1),
      row('routing, loom and stock', cables.all, 15),
      row('  after one moved mic', cables.moved, 5),
      row('  while it is dragged', cables.dragged, 5),
      row('box spots along 8 m', cables.spots, 250),
      row('dense sampling, all mics', sampling.allMics),
      row('dense sampling, one mic', sampling.oneMic),
    ],
    ratios: {
      'sampling / full analysis': sampling.allMics.median / full.median,
      'sampling / index and clearances':
        sampling.allMics.median / (index.median + clearances.median),
      'sampling / one moved drum': sampling.allMics.median / movedDrum.median,
      'sampling / one moved mic': sampling.oneMic.median / movedMic.median,
      'sampling / clearance of one mic': sampling.oneMic.median / oneClearance.median,
      'clearances, 4 x mics (mic by mic: 4)': ratioOfClearances(fourfoldMics, checksum),
      'routing, loom and stock, 4 x mics (aim 6)': cables.fourfold,
      'index, 2 x pieces': ratioOfIndex(twofoldPieces, checksum),
    },
    sampling: {
      positions: sampling.samples,
      step: 'a move is sampled every 2 mm of its fastest point: at most 1 mm above the exact minimum',
      mostAboveEngine: sampling.mostAbove,
      leastAboveEngine: sampling.leastAbove,
    },
    javascript: initialJavascript(join(process.cwd(), 'dist')) ?? null,
    checksum: Number(checksum.total.toFixed(3)),
  };
}

function table(result: ReturnType<typeof benchmark>): string {
  const { kit, sampling, javascript } = result;
  const ms = (value: number): string => value.toFixed(value < 10 ? 3 : 1).padStart(10);
  const times = result.times.map(({ name, median, low, high, runs, aim }) => {
    const numbers = [median, low, high].map(ms).join('') + String(runs).padStart(6);
    return `${name.padEnd(28)}${numbers}${aim === null ? '' : `   aim ${aim}`}`;
  });
  const ratios = Object.entries(result.ratios).map(
    ([name, ratio]) => `${name.padEnd(44)}${ratio.toFixed(2).padStart(10)}`,
  );
  const size = javascript
    ? `${javascript.gzippedKilobytes.toFixed(1)} kB gzipped (aim 300) in ${javascript.files.length} files`
    : 'not built yet: npm run build';
  return [
    `${kit.name}: ${kit.pieces} pieces, ${kit.mics} mics, ${kit.moves} moves; ${result.machine}`,
    '',
    `${'ms'.padEnd(28)}    median      10 %      90 %  runs`,
    ...times,
    '',
    `dense sampling: ${sampling.positions} positions; ${sampling.step};`,
    `found ${sampling.leastAboveEngine.toFixed(3)} to ${sampling.mostAboveEngine.toFixed(3)} mm above the engine`,
    '',
    ...ratios,
    '',
    `initial JavaScript: ${size}`,
    `checksum ${result.checksum}`,
  ].join('\n');
}

/** What dragging costs in a browser, where it is asked for: it takes minutes. */
async function inBrowser() {
  if (!process.argv.includes('--browser')) return null;
  const { benchmarkDrags, dragTable } = await import('./browser/dragBench.ts');
  const drags = await benchmarkDrags(process.argv.includes('--some'));
  return { drags, table: dragTable(drags) };
}

const result = benchmark();
const browser = await inBrowser();
const text = process.argv.includes('--json')
  ? JSON.stringify({ ...result, browser: browser?.drags ?? null }, null, 2)
  : [table(result), ...(browser ? [browser.table] : [])].join('\n\n');
process.stdout.write(`${text}\n`);
