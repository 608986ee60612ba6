import { describe, expect, test } from 'vitest';
import { createTurner } from '../../../src/editor/elevation/turned.ts';
import { focusAt, focusOn, turnedFocus } from '../../../src/editor/move/micFocus.ts';
import { moveExtent } from '../../../src/editor/move/useShowMove.ts';
import { distance, type Vec3, vec } from '../../../src/geometry/vector.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { figureOf } from '../../../src/report/figure.ts';
import { standpointOf } from '../../../src/rig/standpoint.ts';
import { clipInDrum } from '../../report/clipInDrum.ts';
import { kit } from '../support.ts';

const layout = kit('large-kit');
const open = { layout, report: createAnalyst()(layout) };
const figure = figureOf(layout.player, layout.pieces);
const rows = open.report.clearances;
const flat = ({ x, y }: Vec3) => ({ x, y });

describe('what a mic is judged by', () => {
  test('is where its clearance is, whatever moves there', () => {
    const kinds = new Set<string>();
    for (const row of rows) {
      const focus = focusOn(open, row.mic, figure);
      if (!focus || !row.nearest) throw new Error('expected a focus');
      const { movement, onMic, onMoving } = row.nearest;
      kinds.add(movement.kind);
      expect(focus.place?.ends).toEqual([onMic, onMoving]);
      expect(focus.place?.verdict).toBe(row.verdict);
      expect(focus.sweep !== null).toBe('hand' in movement);
      expect(focus.arm !== null).toBe('hand' in movement);
      expect(focus.swinging !== null).toBe(movement.kind === 'swing');
      expect(focus.leg.length).toBe(movement.kind === 'leg' ? 2 : 0);
    }
    expect(kinds.size).toBeGreaterThan(1);
    expect(focusOn(open, 'gone', figure)).toBeNull();
  });

  test('at its nearest moment it is what the clearance says, elsewhere it is farther', () => {
    for (const row of rows) {
      const focus = focusOn(open, row.mic, figure);
      const movement = row.nearest?.movement;
      if (!focus || !movement) throw new Error('expected a focus');
      expect(focus.nearestAt === null).toBe(movement.kind === 'leg');
      if (focus.nearestAt === null) {
        expect(focusAt(focus, open, row, 0.5)).toBeNull();
        continue;
      }
      const nearest = focusAt(focus, open, row, focus.nearestAt);
      expect(nearest?.focus).toBe(focus);
      expect(nearest?.moment).toMatchObject({ clearance: row.clearance, verdict: row.verdict });
      for (const at of [0, 0.25, 0.5, 1]) {
        const there = focusAt(focus, open, row, at);
        expect(there?.moment.clearance).toBeGreaterThanOrEqual(row.clearance);
        expect(there?.focus.arm?.at).toBe('hand' in movement ? at : undefined);
        expect(there?.focus.swung !== null).toBe(movement.kind === 'swing');
        expect(there?.focus.sweep).toBe(focus.sweep);
        expect(there?.focus.place?.text).toContain(
          'hand' in movement ? movement.hand : 'swinging cymbal',
        );
      }
    }
  });

  test('of a mic that stands in its drum no place is marked as clear, and its number stays', () => {
    const low = clipInDrum(layout);
    const sunk = { layout: low.layout, report: createAnalyst()(low.layout) };
    const row = sunk.report.clearances.find(({ mic }) => mic === low.mic.id);
    const focus = focusOn(sunk, low.mic.id, figure);
    if (!row || !focus) throw new Error('expected a focus');
    expect(row.verdict).toBe('clear');
    expect(focus.place?.verdict).toBeNull();
    expect(focus.place?.text).toContain(`${Math.floor(row.clearance)} mm, `);
    expect(focusAt(focus, sunk, row, 0)?.focus.place?.verdict).toBeNull();
  });

  test('E1: in an elevation it is the same, turned', () => {
    const turner = createTurner(standpointOf(layout.deck, 'side', 'house'));
    for (const { mic } of rows) {
      const focus = focusOn(open, mic, figure);
      if (!focus?.place) throw new Error('expected a place');
      const turned = turnedFocus(focus, turner);
      const [a, b] = turned.place?.ends ?? [];
      if (!a || !b) throw new Error('expected two ends');
      expect(distance(a, b)).toBeCloseTo(distance(...focus.place.ends), 6);
      expect(a.y).toBeCloseTo(focus.place.ends[0].z, 9);
      expect(turned.place?.text).toBe(focus.place.text);
      expect(turned.swung?.centre.y).toBe(focus.swung?.centre.z);
    }
  });
});

test('a move is shown whole, with the mic and some ground round it', () => {
  for (const { mic } of rows) {
    const focus = focusOn(open, mic, figure);
    if (!focus?.sweep) continue;
    const extent = moveExtent(focus, flat);
    if (!extent) throw new Error('expected an extent');
    for (const { tip, elbow } of focus.sweep.positions) {
      for (const { x, y } of [tip, elbow]) {
        expect(x).toBeGreaterThan(extent.left);
        expect(x).toBeLessThan(extent.right);
        expect(y).toBeGreaterThan(extent.back);
        expect(y).toBeLessThan(extent.front);
      }
    }
  }
  expect(moveExtent({ sweep: null, swinging: null, place: null }, flat)).toBeNull();
});

test('a swing is shown whole, with the mic', () => {
  const swinging = { centre: vec(100, 200, 900), normal: vec(0, 0, 1), radius: 180 };
  const place = { ends: [vec(320, 200, 900), vec(280, 200, 900)] as const };
  const words = { verdict: 'tight', text: '40 mm, swinging cymbal' } as const;
  const extent = moveExtent({ sweep: null, swinging, place: { ...place, ...words } }, flat);
  expect(extent).toEqual({ left: -170, right: 410, back: -70, front: 470 });
});
