import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { createSoundReporter, type Sound } from '../../src/report/sound.ts';
import { measure, type Times } from './measure.ts';
import { type Checksum, largest, withMovedMic } from './timings.ts';

/** Sums up levels, isolation, delays and ripples: what every part of the sound ends in. */
const addSounds =
  (checksum: Checksum) =>
  (sounds: readonly Sound[]): void => {
    for (const { hearing, close, timing, pairs, overheads } of sounds) {
      checksum.add(...hearing.flatMap(({ heard }) => heard.map(({ level }) => level)));
      checksum.add(...close.map(({ isolation }) => isolation));
      checksum.add(...timing.rows.map(({ delay }) => delay.ms));
      checksum.add(...pairs.map(({ levelDifference }) => levelDifference));
      checksum.add(...(overheads?.heights.rows ?? []).map(({ spread }) => spread));
    }
  };

const placed = (layout: Layout, analyse = createAnalyst()) => ({ layout, report: analyse(layout) });

/** All that is heard, by every mic of every piece and of every pair of mics, with nothing known from before. */
export function timesOfSound(checksum: Checksum): Times {
  const [warmUp, runs] = [20, 40];
  const kits = Array.from({ length: warmUp + runs }, () => placed(structuredClone(largest)));
  let next = 0;
  const work = (): Sound => {
    const { layout, report } = kits[next++ % kits.length] ?? placed(largest);
    return createSoundReporter().of(layout, report);
  };
  return measure({ warmUp, runs }, work, addSounds(checksum));
}

/** All that is heard after one mic moved, by a reporter that knows the kit. */
export function timesOfSoundAfterMove(checksum: Checksum): Times {
  const runs = 128;
  const analyse = createAnalyst();
  const kit = structuredClone(largest);
  const before = placed(kit, analyse);
  const moved = Array.from({ length: 2 * runs }, (_, run) =>
    placed(withMovedMic(kit, run), analyse),
  );
  const reporter = createSoundReporter();
  reporter.of(before.layout, before.report);
  let next = 0;
  const work = (): Sound => {
    const { layout, report } = moved[next++ % moved.length] ?? before;
    return reporter.of(layout, report);
  };
  return measure({ warmUp: runs, runs }, work, addSounds(checksum));
}
