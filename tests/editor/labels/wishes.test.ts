import { describe, expect, test } from 'vitest';
import { onScreen, placeLabels } from '../../../src/editor/labels/placeLabels.ts';
import {
  type Lettered,
  lettering,
  measureLabel,
  micLabels,
  nameForms,
} from '../../../src/editor/labels/wishes.ts';
import { focusOn } from '../../../src/editor/move/micFocus.ts';
import { kitToScreen } from '../../../src/editor/view/kitView.ts';
import { zoomed } from '../../../src/editor/view/view.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { figureOf } from '../../../src/report/figure.ts';
import { kit, tipsIn, viewOf } from '../support.ts';

const analyse = createAnalyst();
const lettered = (layout: Layout, more: Partial<Lettered> = {}): Lettered => ({
  layout,
  report: analyse(layout),
  selection: null,
  showRuns: true,
  kitView: viewOf(layout),
  measure: (text) => text.length * 8,
  ...more,
});
const placeOf = ({ layout, report, selection }: Lettered) =>
  selection?.kind === 'mic'
    ? (focusOn({ layout, report }, selection.id, figureOf(layout.player, layout.pieces))?.place ??
      null)
    : null;
const placed = (what: Lettered) =>
  placeLabels(
    [...measureLabel(what, placeOf(what)), ...lettering(what)].map(({ wish }) => wish),
    {
      size: what.kitView.view.size,
      covered: [],
      reserved: [],
      before: new Map(),
      tips: tipsIn(what.report, what.kitView),
    },
  );

describe('what is lettered on the plan', () => {
  test('a cable without a way says so beside its number, plugged or not, ahead of the numbers of others', () => {
    const jazz = kit('four-piece-jazz');
    const kick = jazz.pieces.find((piece) => piece.kind === 'kick');
    if (kick?.kind !== 'kick') throw new Error('expected a kick');
    const { x, y } = jazz.deck.kit;
    const inKick = { ...jazz, box: { ...jazz.box, x: x + kick.x, y: y + kick.y + 200 } };
    const [first, ...rest] = inKick.mics;
    if (!first) throw new Error('expected a mic');
    const what = lettered({ ...inKick, mics: [{ ...first, input: null }, ...rest] });
    const lost = what.report.runs.filter(({ through }) => through.length > 0);
    expect(lost.length).toBeGreaterThan(1);
    const texts = new Map(
      lettering(what).map(({ wish }) => [wish.key, wish.forms.map(({ text }) => text)]),
    );
    const keys = new Set(placed(what).map(({ key }) => key));
    for (const { mic, input } of lost) {
      expect(texts.get(`run ${mic}`)).toEqual([
        input === null ? 'no way' : `${input} no way`,
        'no way',
      ]);
    }
    const shown = lost.filter(({ mic }) => keys.has(`run ${mic}`)).length;
    expect(shown).toBeGreaterThanOrEqual(lost.length - 1);
    const free = lettered(jazz);
    expect(free.report.runs.every(({ through }) => through.length === 0)).toBe(true);
    expect(
      lettering(free).some(({ wish }) => wish.forms.some(({ text }) => /way/.test(text))),
    ).toBe(false);
  });

  test('every mic in view has its mark, in every starting kit, seen from either side, at four zooms', () => {
    for (const { make } of STARTING_KITS) {
      const layout = make('kit');
      for (const seenFrom of ['house', 'player'] as const) {
        for (const factor of [0.5, 1, 2, 6]) {
          const fit = viewOf(layout, seenFrom);
          const view = zoomed(fit.view, factor, { x: 380, y: 300 });
          const what = lettered(layout, { kitView: { ...fit, view } });
          const keys = new Set(placed(what).map(({ key }) => key));
          for (const { mic, tip } of what.report.rig.mics) {
            if (onScreen(kitToScreen(what.kitView, tip), view.size)) {
              expect(keys).toContain(`mic ${mic.id}`);
            }
          }
          expect(keys).toContain('side true');
        }
      }
    }
  });

  test('the word of the audience steps aside where a mic lies under it, and the player’s stays with the player', () => {
    const what = lettered(kit('five-piece-one-rack'));
    const labels = lettering(what).filter(({ wish }) => wish.key.startsWith('side'));
    const [audience, player] = labels.map(({ wish }) => wish);
    if (!audience || !player) throw new Error('expected both words');
    expect(player.spots).toHaveLength(1);
    const { size } = what.kitView.view;
    const { x, y } = audience.at;
    const mic = { left: x - 40, top: y - 40, width: 80, height: 80 };
    const ground = { size, covered: [mic], reserved: [], before: new Map(), tips: [] };
    const [free] = placeLabels([audience], { ...ground, covered: [] });
    const [aside] = placeLabels([audience], ground);
    expect(free?.place).toBe(0);
    expect(aside?.place).toBeGreaterThan(0);
  });

  test('stairs are named inside the deck beside them, with the way they lead, also where buttons stand over the edge', () => {
    const layout = kit('large-kit');
    for (const [seenFrom, arrow] of [
      ['house', '↑'],
      ['player', '↓'],
    ] as const) {
      const fit = viewOf(layout);
      const what = lettered(layout, {
        kitView: { ...fit, view: { ...fit.view, seenFrom } },
      });
      const wishes = lettering(what).filter(({ wish }) => wish.key.startsWith('stairs'));
      expect(wishes).toHaveLength(layout.deck.stairs.length);
      const [{ wish } = { wish: undefined }] = wishes;
      if (!wish) throw new Error('expected stairs');
      expect(wish.forms.map(({ text }) => text)).toEqual([`Stairs ${arrow}`]);
      const { size } = what.kitView.view;
      const ground = { size, covered: [], before: new Map(), tips: [] };
      const inside = seenFrom === 'house' ? 1 : -1;
      const yOf = (label: { box: { top: number; height: number } } | undefined) =>
        label ? label.box.top + label.box.height / 2 : Number.NaN;
      const [free] = placeLabels([wish], { ...ground, reserved: [] });
      expect((yOf(free) - wish.at.y) * inside).toBeGreaterThan(0);
      const over = { left: 0, top: wish.at.y - 20, width: size.width, height: 40 };
      const [moved] = placeLabels([wish], { ...ground, reserved: [over] });
      expect(Math.abs(yOf(moved) - wish.at.y)).toBeGreaterThan(20);
    }
  });

  test('from afar secondary labels are left out, close by they are all there', () => {
    const layout = kit('large-kit');
    const fit = viewOf(layout);
    const count = (factor: number) => {
      const view = zoomed(fit.view, factor, { x: 400, y: 380 });
      return placed(lettered(layout, { kitView: { ...fit, view } })).filter(({ key }) =>
        key.startsWith('piece'),
      ).length;
    };
    expect(count(0.35)).toBeLessThan(count(1));
  });

  test('a name that would stand far out over its piece is shortened, then left out; a selected piece is always named in full', () => {
    const named = (name: string, width: number | null) =>
      nameForms(
        { name, look: { kind: 'name', strong: false }, measure: (text) => 8 * text.length },
        width,
      ).map(({ text }) => text);
    expect(named('Rack tom 1', 80)).toEqual(['Rack tom 1', 'Rack 1']);
    expect(named('Rack tom 1', 40)).toEqual(['Rack 1']);
    expect(named('Rack tom 1', 30)).toEqual([]);
    expect(named('Rack tom 1', null)[0]).toBe('Rack tom 1');
    expect(named('Tom', 24)).toEqual(['Tom', 'Tom']);
  });

  test('hardly any room keeps its word where only the number is written', () => {
    const layout = kit('large-kit');
    const report = analyse(layout);
    const clearances = report.clearances.map((row) => ({
      ...row,
      clearance: 0.4,
      verdict: 'clear' as const,
    }));
    const fit = viewOf(layout);
    const view = zoomed(fit.view, 0.5, { x: 400, y: 380 });
    const kitView = { ...fit, view };
    const [label] = micLabels(lettered(layout, { report: { ...report, clearances }, kitView }));
    expect(label?.wish.forms.map(({ text }) => text)).toEqual(['under 1', '']);
  });

  test('a clearance is written with its unit, and struck and tight ones from any distance', () => {
    const layout = { ...kit('large-kit'), margin: 300 };
    const what = lettered(layout);
    const tight = what.report.clearances.filter(({ verdict }) => verdict === 'tight');
    expect(tight.length).toBeGreaterThan(0);
    const texts = new Map(placed(what).map(({ key, form }) => [key, form.text]));
    for (const { mic, clearance } of tight) {
      expect(texts.get(`mic ${mic}`)).toBe(`${Math.floor(clearance)} mm`);
    }
  });

  test('the selected mic is named, and its clearance stands at the place where it is measured', () => {
    const layout = kit('large-kit');
    const [row] = analyse(layout).clearances;
    if (!row) throw new Error('expected a mic');
    const texts = new Map(
      placed(lettered(layout, { selection: { kind: 'mic', id: row.mic } })).map((label) => [
        label.key,
        label.form.text,
      ]),
    );
    expect(texts.get(`mic ${row.mic}`)).toBe(layout.mics.find(({ id }) => id === row.mic)?.name);
    expect(texts.get('measure')).toMatch(new RegExp(`^${Math.floor(row.clearance)} mm, `));
  });

  test('in inches a clearance is never rounded up', () => {
    const layout: Layout = { ...kit('large-kit'), units: 'in', margin: 300 };
    const what = lettered(layout);
    const texts = new Map(placed(what).map(({ key, form }) => [key, form.text]));
    for (const { mic, clearance, verdict } of what.report.clearances) {
      if (verdict === 'clear') continue;
      const text = texts.get(`mic ${mic}`) ?? '';
      expect(Number.parseFloat(text) * 25.4).toBeLessThanOrEqual(clearance);
      expect(text).toMatch(/ in$/);
    }
  });
});

test('a mic that stands in its drum is not lettered as clear, however far what moves is from it', () => {
  const large = largeKit('kit');
  const clip = large.mics.find(({ mount }) => mount.kind === 'clip');
  if (clip?.mount.kind !== 'clip') throw new Error('expected a clip');
  const low = { ...clip, mount: { ...clip.mount, height: 5, pitch: 20, reach: 40 } };
  const sunk = { ...large, mics: large.mics.map((mic) => (mic === clip ? low : mic)) };
  const label = (layout: Layout) =>
    micLabels(lettered(layout)).find(({ wish }) => wish.key === `mic ${clip.id}`);
  expect(label(large)?.look).toMatchObject({ verdict: 'clear' });
  expect(label(sunk)?.look).toMatchObject({ verdict: 'struck' });
  expect(
    label(sunk)
      ?.wish.forms.map(({ text }) => text)
      .at(-1),
  ).toBe('in the way');
});
