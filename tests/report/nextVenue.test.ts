import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { addSignOff } from '../../src/layout/edit/signOffs.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { checkLayout } from '../../src/layout/read.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { compareLayouts } from '../../src/report/compareLayouts.ts';
import {
  asInOrigin,
  type NextVenue,
  nextVenue,
  toggledStairs,
} from '../../src/report/nextVenue.ts';

const kit = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') as Layout;
const signed = addSignOff(
  { ...kit, setUp: { done: ['deck'] } },
  { name: 'Drummer', at: '2031-05-17T18:30:00Z', consent: true, answers: [], notes: '' },
);
const to: NextVenue = {
  id: 'next',
  name: 'Second night',
  venue: { name: 'Barn', date: '2031-05-18', temperature: 8, humidity: 80 },
  deck: {
    width: 3000,
    depth: 2600,
    height: 600,
    stairs: [{ edge: 'left', offset: 0, width: 800 }],
  },
  boxEdge: 'right',
  stock: [{ length: 5000, count: 20 }],
};
const analyse = createAnalyst();
const analysed = (layout: Layout) => ({ layout, report: createAnalyst()(layout) });

test('kit, player, mics and sign-off stay, the venue is the new one, and it passes its check (X1, X2, X4)', () => {
  const next = nextVenue(signed, to);
  const { player, pieces, mics, ownClasses, signOffs } = signed;
  expect(next).toMatchObject({ player, pieces, mics, ownClasses, signOffs, id: 'next' });
  expect(next.venue).toEqual({ ...to.venue, notes: '' });
  expect(next.deck).toEqual({ ...to.deck, kit: kit.deck.kit });
  expect(next.setUp.done).toEqual([]);
  expect(next.patch).toMatchObject({ ticks: [], lineCheck: [] });
  expect(next.origin).toMatchObject({
    layout: 'kit',
    name: kit.name,
    deck: kit.deck,
    box: kit.box,
  });
  expect(analyse(next).signOff.kind).toBe('holds');
  expect(checkLayout(structuredClone(next))).toEqual({ ok: true, layout: next });
});

test('the box stands free at the edge that was chosen, and else where it was (X3)', () => {
  const next = nextVenue(signed, to);
  expect(next.box.x).toBeGreaterThan(to.deck.width / 2 - 200);
  expect(analyse(next).findings.map(({ code }) => code)).not.toContain('box-in-obstacle');
  expect(nextVenue(signed, { ...to, boxEdge: null }).box).toEqual(kit.box);
});

test('set beside its origin: findings, runs, stock and the stage, and no change of the kit', () => {
  const small = { ...to, deck: { ...to.deck, width: 1800 }, stock: [{ length: 1000, count: 30 }] };
  const next = nextVenue(signed, small);
  const before = asInOrigin(next);
  if (!before) throw new Error('it has an origin');
  expect(compareLayouts(analysed(kit), analysed(before)).gained).toEqual([]);
  const {
    kit: changes,
    gained,
    runs,
    missing,
    stage,
  } = compareLayouts(analysed(before), analysed(next));
  expect(changes).toEqual({ player: [], pieces: [], mics: [] });
  expect(gained.some(({ code }) => code.endsWith('off-deck'))).toBe(true);
  expect(runs.length).toBeGreaterThan(0);
  expect(missing.before).toEqual([]);
  expect(missing.after.length).toBeGreaterThan(0);
  expect(stage.map(({ path }) => path)).toContain('venue.temperature');
  expect(asInOrigin(kit)).toBeNull();
});

test('stairs keep their size where they were, and are usual where they come new', () => {
  const back = [{ edge: 'back', offset: -60, width: 700 }] as const;
  expect(toggledStairs(back, 'back', true)).toEqual(back);
  expect(toggledStairs(back, 'back', false)).toEqual([]);
  expect(toggledStairs(back, 'left', true)).toEqual([
    ...back,
    { edge: 'left', offset: 0, width: 800 },
  ]);
});
