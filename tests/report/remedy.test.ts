import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { STAND_CLASSES, standSpec } from '../../src/layout/catalogue/standClasses.ts';
import {
  moveMicBase,
  moveMicTip,
  setMast,
  setStandClass,
  turnMicStand,
} from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { remedyOf, takeRemedy } from '../../src/report/remedy.ts';
import type { FindingCode } from '../../src/report/report.ts';
import { toDeck } from '../../src/rig/deckFrame.ts';
import { restsOfMic } from '../../src/rig/standing/offDeck.ts';

const kits: readonly Layout[] = STARTING_KITS.map((kit) => kit.make(kit.key));
const analyse = createAnalyst();

/** The first finding of a code about a mic with its remedy, and the codes about the mic once it is taken. */
function remedied(layout: Layout, code: FindingCode, mic: string) {
  const report = analyse(layout);
  const finding = report.findings.find((each) => each.code === code && each.about.includes(mic));
  if (!finding) return undefined;
  const remedy = remedyOf(finding, layout, report);
  const taken = remedy && takeRemedy(layout, remedy);
  const after = taken ? analyse(taken) : undefined;
  return { remedy, taken, before: report, after };
}

const codesAbout = (report: ReturnType<typeof analyse> | undefined, id: string) =>
  report?.findings.filter(({ about }) => about.includes(id)).map(({ code }) => code);

describe('Y1: a mic beyond its stand', () => {
  const layout = kits.find(({ mics }) =>
    mics.some(({ mount }) => mount.kind === 'stand' && mount.stand === 'tripodTall'),
  );
  const mic = layout?.mics.find(
    ({ mount }) => mount.kind === 'stand' && mount.stand === 'tripodTall',
  );
  if (!layout || !mic) throw new Error('a starting kit has a mic on a tall stand');

  it('is offered the smallest class that reaches it, and is reached by it', () => {
    const low = setStandClass(layout, mic.id, 'tripodLow');
    const found = remedied(low, 'mic-beyond-stand', mic.id);
    expect(found?.remedy).toMatchObject({ kind: 'stand', mic: mic.id, follows: false });
    expect(codesAbout(found?.after, mic.id)).not.toContain('mic-beyond-stand');
    const smaller = STAND_CLASSES.slice(
      0,
      STAND_CLASSES.findIndex(
        ({ standClass }) => found?.remedy?.kind === 'stand' && standClass === found.remedy.stand,
      ),
    );
    for (const { standClass } of smaller) {
      const report = analyse(setStandClass(layout, mic.id, standClass));
      expect(codesAbout(report, mic.id)).toContain('mic-beyond-stand');
    }
  });

  it('keeps its class where only the height that the mast was given is in the way', () => {
    const { mastMax } = standSpec('tripodTall');
    const stuck = setMast(layout, mic.id, mastMax + 400);
    const found = remedied(stuck, 'mic-beyond-stand', mic.id);
    expect(found?.remedy).toMatchObject({ kind: 'stand', follows: true });
    expect(codesAbout(found?.after, mic.id)).not.toContain('mic-beyond-stand');
  });

  it('is offered none where no class reaches', () => {
    const away = moveMicTip(layout, mic.id, { x: 0, y: 0, z: 3800 });
    expect(remedied(away, 'mic-beyond-stand', mic.id)?.remedy).toBeNull();
  });
});

describe('Y2 and Y3: feet', () => {
  /** Every mic stand of the kits, at every turn of ten degrees. */
  const turned = kits.flatMap((layout) =>
    layout.mics
      .filter(({ mount }) => mount.kind === 'stand')
      .flatMap(({ id }) =>
        Array.from({ length: 12 }, (_, k) => ({ id, layout: turnMicStand(layout, id, 10 * k) })),
      ),
  );

  it('Y2: what overlapped is free after the turn, nothing about it is new, and its clearance is no worse', () => {
    let freed = 0;
    for (const { id, layout } of turned) {
      const found = remedied(layout, 'feet-overlap', id);
      if (!found?.after || found.remedy?.kind !== 'turn') continue;
      freed += 1;
      const about = found.remedy.feet.id;
      const before = codesAbout(found.before, about) ?? [];
      const after = codesAbout(found.after, about) ?? [];
      expect(after).not.toContain('feet-overlap');
      expect(after.filter((code) => !code.startsWith('run-') && !before.includes(code))).toEqual(
        [],
      );
      const room = (report: typeof found.before) =>
        report.clearances.find(({ mic }) => mic === about)?.clearance ?? Number.POSITIVE_INFINITY;
      expect(room(found.after)).toBeGreaterThanOrEqual(
        Math.min(layout.margin, room(found.before)) - 0.2,
      );
    }
    expect(freed).toBeGreaterThan(5);
  });

  it('Y3: a stand that may tip gets a leg under its boom where a turn does it', () => {
    let firmer = 0;
    for (const { id, layout } of turned) {
      const mount = layout.mics.find((mic) => mic.id === id)?.mount;
      if (mount?.kind !== 'stand') continue;
      // A longer boom: the base is moved away from under the mic.
      const [dx, dy] = [mount.base.x - mount.tip.x, mount.base.y - mount.tip.y];
      const far = moveMicBase(layout, id, {
        x: mount.tip.x + 1.25 * dx,
        y: mount.tip.y + 1.25 * dy,
      });
      const found = remedied(far, 'stand-may-tip', id);
      if (!found?.after) continue;
      firmer += 1;
      expect(codesAbout(found.after, id)).not.toContain('stand-may-tip');
    }
    expect(firmer).toBeGreaterThan(0);
  });

  it('other findings have no remedy of one tap', () => {
    const layout = kits[0];
    if (!layout) throw new Error('there is a starting kit');
    const report = analyse(layout);
    const finding = {
      key: 'k',
      code: 'clip-metal-rim',
      severity: 'note',
      about: [],
      place: undefined,
      numbers: {},
    } as const;
    expect(remedyOf(finding, layout, report)).toBeNull();
  });
});

describe('Y7: a stand over the edge of the deck', () => {
  const OUT = 60;
  /** Every mic stand of three kits on a deck so narrow, or so shallow, that its outmost foot is over the edge by `OUT` mm. */
  const over = kits.slice(0, 3).flatMap((layout) =>
    analyse(layout).rig.mics.flatMap((placed) => {
      if (!placed.stand) return [];
      const reach = (of: 'x' | 'y') =>
        Math.max(
          ...restsOfMic(placed).map(
            ({ spot, radius }) => Math.abs(toDeck(layout.deck, spot)[of]) + radius,
          ),
        );
      const { id } = placed.mic;
      return [
        { id, layout: { ...layout, deck: { ...layout.deck, width: 2 * (reach('x') - OUT) } } },
        { id, layout: { ...layout, deck: { ...layout.deck, depth: 2 * (reach('y') - OUT) } } },
      ];
    }),
  );

  it('Y7: all feet stand on the deck, no farther in than they must, the tip stays, nothing about it is new, and its clearance is no worse', () => {
    const kinds = new Set<string>();
    for (const { id, layout } of over) {
      const found = remedied(layout, 'base-off-deck', id);
      if (!found?.after || !found.remedy) continue;
      kinds.add(found.remedy.kind);
      if (found.remedy.kind === 'base') {
        const finding = found.before.findings.find(
          ({ code, about }) => code === 'base-off-deck' && about[0] === id,
        );
        const farther = found.remedy.by - (finding?.numbers['beyond'] ?? 0);
        expect(farther).toBeGreaterThanOrEqual(-1e-6);
        expect(farther).toBeLessThan(1.001);
      }
      const before = codesAbout(found.before, id) ?? [];
      const after = codesAbout(found.after, id) ?? [];
      expect(after).not.toContain('base-off-deck');
      expect(after.filter((code) => !code.startsWith('run-') && !before.includes(code))).toEqual(
        [],
      );
      const tipIn = (report: typeof found.before) =>
        report.rig.mics.find(({ mic }) => mic.id === id)?.tip;
      expect(tipIn(found.after)).toEqual(tipIn(found.before));
      const room = (report: typeof found.before) =>
        report.clearances.find(({ mic }) => mic === id)?.clearance ?? Number.POSITIVE_INFINITY;
      expect(room(found.after)).toBeGreaterThanOrEqual(
        Math.min(layout.margin, room(found.before)) - 0.2,
      );
    }
    expect(kinds).toEqual(new Set(['turn', 'base']));
  });
});
