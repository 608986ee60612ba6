import { describe, expect, it } from 'vitest';
import { swapOf } from '../../src/cabling/swap/swapSteps.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeMount, moveMicBase } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import type { Report } from '../../src/report/report.ts';
import { swapOffers, takeSwapOffer } from '../../src/report/swapOffer.ts';

const analyse = createAnalyst();
const large = largeKit('kit');

function offersFor(layout: Layout, drum: string) {
  const report = analyse(layout);
  const swap = swapOf(report.rig, drum);
  if (!swap) throw new RangeError(`${drum} is no drum`);
  return { report, swap, offers: swapOffers(layout, report, swap) };
}

describe('ways of holding a mic that leave fewer things to undo', () => {
  it.each(STARTING_KITS)('Y5: $name: every offer holds what it says', (kit) => {
    const layout = kit.make('kit');
    for (const { id } of layout.pieces.filter(isDrum)) {
      const { report, swap, offers } = offersFor(layout, id);
      for (const offer of offers) {
        const taken = takeSwapOffer(layout, offer);
        const after = analyse(taken);
        expect(offer.steps).toBeLessThan(swap.steps.length);
        expect(swapOf(after.rig, id)?.steps).toHaveLength(offer.steps);
        const now = report.clearances.find(({ mic }) => mic === offer.mic)?.clearance ?? 0;
        const then = after.clearances.find(({ mic }) => mic === offer.mic)?.clearance ?? 0;
        expect(then).toBeGreaterThanOrEqual(Math.min(now, layout.margin) - 0.5);
        const wrong = (of: typeof report) =>
          of.findings
            .filter(({ about, code }) => about.includes(offer.mic) && !isOfCables(code))
            .map(({ key }) => key);
        expect(wrong(report)).toEqual(expect.arrayContaining(wrong(after)));
        const [tip, tipNow] = [after, report].map(
          ({ rig }) => rig.mics.find(({ mic }) => mic.id === offer.mic)?.tip,
        );
        expect(
          Math.hypot((tip?.x ?? 0) - (tipNow?.x ?? 9), (tip?.y ?? 0) - (tipNow?.y ?? 9)),
        ).toBeLessThan(1);
      }
    }
  });

  it.each(STARTING_KITS)('Y6: $name: nothing more must be solved with an offer taken', (kit) => {
    const layout = kit.make('kit');
    for (const { id } of layout.pieces.filter(isDrum)) {
      const { report, offers } = offersFor(layout, id);
      for (const offer of offers) {
        expect(stops(report)).toEqual(
          expect.arrayContaining(stops(analyse(takeSwapOffer(layout, offer)))),
        );
      }
    }
  });

  it('Y6: where the first boom would leave the snare’s cables no way, that boom is not offered', () => {
    const { report, offers } = offersFor(large, 'rack-2');
    expect(stops(report).filter((key) => key.startsWith('run-no-way'))).toEqual([]);
    for (const offer of offers) {
      const after = stops(analyse(takeSwapOffer(large, offer)));
      expect(after.filter((key) => key.startsWith('run-no-way'))).toEqual([]);
    }
  });

  it('Y4: a clip on the large kit’s snare becomes a boom: four things instead of five', () => {
    const { swap, offers } = offersFor(large, 'snare');
    expect(swap.steps).toHaveLength(5);
    expect(offers[0]).toMatchObject({ kind: 'boomForClip', mic: 'mic-snare', steps: 4 });
  });

  it('Y4: a boom that crosses the drum comes from another side', () => {
    const overhead = large.mics.find(({ id }) => id === 'mic-hi-hat');
    if (overhead?.mount.kind !== 'stand') throw new Error('the hi-hat mic stands');
    const snare = large.pieces.find(({ id }) => id === 'snare');
    if (!snare || !('x' in snare)) throw new Error('there is a snare');
    const { tip } = overhead.mount;
    // Beyond the snare as seen from the hi-hat, so that the boom lies across it.
    const far = 520 / Math.hypot(snare.x - tip.x, snare.y - tip.y);
    const across = changeMount(large, overhead.id, (mount) =>
      mount.kind === 'stand'
        ? {
            ...mount,
            base: {
              x: Math.round(tip.x + far * (snare.x - tip.x)),
              y: Math.round(tip.y + far * (snare.y - tip.y)),
            },
          }
        : mount,
    );
    expect(across).not.toBe(large);
    const { swap, offers } = offersFor(across, 'snare');
    const own = swap.steps.filter(({ about }) => about === overhead.id);
    expect(own).toHaveLength(1);
    const offer = offers.find(({ mic }) => mic === overhead.id);
    expect(offer).toMatchObject({ kind: 'boomTurned', steps: swap.steps.length - 1 });
  });

  it('offers nothing where nothing but the drum’s own hold is left', () => {
    const bare = { ...large, mics: [] };
    expect(offersFor(bare, 'snare').offers).toEqual([]);
    expect(moveMicBase(bare, 'mic-snare', { x: 0, y: 0 })).toBe(bare);
  });
});

const stops = ({ findings }: Report): string[] =>
  findings.filter(({ severity }) => severity === 'stop').map(({ key }) => key);

/** The cable's way may change with the stand: lengths are not what an offer promises. */
const isOfCables = (code: string): boolean => /^(run|cable|stock|input|lane)/.test(code);
