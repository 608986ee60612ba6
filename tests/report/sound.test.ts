import { describe, expect, it } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip, moveMicTip, renameMic } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { createSoundReporter } from '../../src/report/sound.ts';

const kit = fivePieceOneRack('kit');
const analyse = createAnalyst();

function clipOf(layout: Layout) {
  const mic = layout.mics.find(({ mount }) => mount.kind === 'clip');
  if (mic?.mount.kind !== 'clip') throw new Error('expected a clip mic in the starting kit');
  return { mic, clip: mic.mount };
}

const soundNow = (reporter: ReturnType<typeof createSoundReporter>, layout: Layout) => {
  const report = analyse(layout);
  return { layout, report, sound: reporter.of(layout, report) };
};

describe('the change since the last edit of a mic', () => {
  const { mic, clip } = clipOf(kit);
  const higher = changeClip(kit, mic.id, { height: clip.height + 40 });
  const highest = changeClip(higher, mic.id, { height: clip.height + 80 });

  it('is none before any edit', () => {
    const reporter = createSoundReporter();
    expect(reporter.changes(soundNow(reporter, kit), [])).toEqual([]);
  });

  it('is that of the last edit alone, and farther is softer', () => {
    const reporter = createSoundReporter();
    const [now, between] = [soundNow(reporter, highest), soundNow(reporter, higher)];
    const levelIn = ({ sound }: typeof now) =>
      sound.close.find((one) => one.mic === mic.id)?.level ?? Number.NaN;
    const changes = reporter.changes(now, [kit, higher]);
    expect(changes.map((change) => change.mic)).toEqual([mic.id]);
    expect(changes[0]?.level).toBeCloseTo(levelIn(now) - levelIn(between), 9);
    expect(changes[0]?.level).toBeLessThan(-0.5);
  });

  it('lasts while other things change, and counts the mic alone', () => {
    const reporter = createSoundReporter();
    const other = kit.pieces.find(({ kind }) => kind === 'crash');
    if (!other) throw new Error('expected a crash in the starting kit');
    const renamed = renameMic(higher, mic.id, 'Another name');
    const moved = movePiece(renamed, other.id, { x: 30, y: 0 });
    const changes = reporter.changes(soundNow(reporter, moved), [kit, higher, renamed]);
    const alone = changeClip(moved, mic.id, { height: clip.height });
    const was = soundNow(reporter, alone).sound.close.find((one) => one.mic === mic.id);
    const is = soundNow(reporter, moved).sound.close.find((one) => one.mic === mic.id);
    expect(changes).toHaveLength(1);
    expect(changes[0]?.isolation).toBeCloseTo((is?.isolation ?? 0) - (was?.isolation ?? 0), 9);
  });

  it('is none for a mic that can no longer be placed as it was', () => {
    const reporter = createSoundReporter();
    const lost: Layout = {
      ...kit,
      mics: kit.mics.map((one) =>
        one.id === mic.id ? { ...one, mount: { ...clip, drum: 'gone' } } : one,
      ),
    };
    expect(reporter.changes(soundNow(reporter, kit), [lost])).toEqual([]);
  });
});

describe('the sound of the starting kits', () => {
  it.each(STARTING_KITS)('$name: the memory changes nothing', (start) => {
    const layout = start.make('kit');
    const report = analyse(layout);
    const reporter = createSoundReporter();
    reporter.of(kit, analyse(kit));
    expect(reporter.of(layout, report)).toEqual(createSoundReporter().of(layout, report));
  });
});

describe('what another place of a mic does to what it must hear', () => {
  const placed = (layout: Layout) => ({ layout, report: analyse(layout) });
  const before = placed(kit);
  const { mic, clip } = clipOf(kit);
  const higher = placed(changeClip(kit, mic.id, { height: clip.height + 40 }));

  it('is the change of a close mic in the whole sound, and the way back its opposite', () => {
    const reporter = createSoundReporter();
    const there = reporter.moved(mic.id, { before, now: higher });
    const back = reporter.moved(mic.id, { before: higher, now: before });
    const of = (one: typeof before) =>
      reporter.of(one.layout, one.report).close.find((row) => row.mic === mic.id);
    const [was, is] = [of(before), of(higher)];
    if (!(was && is && there && back)) throw new Error('expected a close mic');
    expect(there).toMatchObject({ piece: clip.drum, isOneOfSeveral: false });
    expect(there.level).toBeCloseTo(is.level - was.level, 9);
    expect(there.isolation).toBeCloseTo(is.isolation - was.isolation, 9);
    expect(there.level).toBeLessThan(-0.5);
    expect(back.level).toBeCloseTo(-there.level, 9);
  });

  it('is that of the piece that changes most for an overhead, without isolation', () => {
    const overhead = kit.mics.find(
      ({ hears, mount }) => hears.length > 1 && mount.kind === 'stand',
    );
    if (overhead?.mount.kind !== 'stand') throw new Error('expected an overhead on a stand');
    const { tip } = overhead.mount;
    const lower = placed(moveMicTip(kit, overhead.id, { ...tip, z: tip.z - 150 }));
    const reporter = createSoundReporter();
    const moved = reporter.moved(overhead.id, { before, now: lower });
    const levels = ({ layout, report }: typeof before) =>
      reporter
        .of(layout, report)
        .hearing.find((row) => row.mic === overhead.id)
        ?.heard.filter(({ piece }) => overhead.hears.includes(piece)) ?? [];
    const was = levels(before);
    const changes = levels(lower).map(({ level }, k) => level - (was[k]?.level ?? Number.NaN));
    expect(changes.length).toBeGreaterThan(1);
    expect(moved?.isolation).toBeNull();
    expect(moved?.isOneOfSeveral).toBe(true);
    expect(Math.abs(moved?.level ?? 0)).toBeCloseTo(Math.max(...changes.map(Math.abs)), 9);
  });

  it('is none for a mic that is not there or must hear nothing', () => {
    const deaf = (layout: Layout): Layout => ({
      ...layout,
      mics: layout.mics.map((one) => (one.id === mic.id ? { ...one, hears: [] } : one)),
    });
    const reporter = createSoundReporter();
    const places = { before: placed(deaf(kit)), now: placed(deaf(higher.layout)) };
    expect(reporter.moved(mic.id, places)).toBeUndefined();
    expect(reporter.moved('gone', { before, now: higher })).toBeUndefined();
  });
});
