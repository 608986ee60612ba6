import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type FingerAct,
  type FingerEvent,
  type Fingers,
  noFingers,
  turn,
} from '../../../src/editor/tools/fingers.ts';

const SLOP = 8;
const at = (x: number, y: number) => ({ x, y });
const down = (id: number, x: number, y: number, grabs = false): FingerEvent => ({
  kind: 'down',
  id,
  at: at(x, y),
  grabs,
});
const move = (id: number, x: number, y: number): FingerEvent => ({
  kind: 'move',
  id,
  at: at(x, y),
  slop: SLOP,
});
const up = (id: number): FingerEvent => ({ kind: 'up', id });

function play(...events: readonly FingerEvent[]): { fingers: Fingers; acts: FingerAct[] } {
  let fingers: Fingers = noFingers;
  const acts: FingerAct[] = [];
  for (const event of events) {
    const turned = turn(fingers, event);
    fingers = turned.fingers;
    acts.push(...turned.acts);
  }
  return { fingers, acts };
}

describe('what fingers mean', () => {
  test('T1: a press that trembles within the slop is a tap where it was pressed', () => {
    const { fingers, acts } = play(down(1, 100, 100, true), move(1, 104, 103), up(1));
    expect(acts).toEqual([{ kind: 'tap', at: at(100, 100) }]);
    expect(fingers).toEqual(noFingers);
  });

  test('T2: on something that can be dragged a move takes hold where the finger first touched', () => {
    const { acts } = play(down(1, 100, 100, true), move(1, 120, 100), move(1, 130, 110), up(1));
    expect(acts).toEqual([
      { kind: 'grab', at: at(100, 100) },
      { kind: 'drag', to: at(120, 100) },
      { kind: 'drag', to: at(130, 110) },
      { kind: 'drop' },
    ]);
  });

  test('T2: elsewhere it pans, by all of the way', () => {
    const { acts } = play(down(1, 100, 100), move(1, 120, 100), move(1, 130, 110), up(1));
    expect(acts).toEqual([
      { kind: 'pan', by: at(20, 0) },
      { kind: 'pan', by: at(10, 10) },
    ]);
  });

  test('T3: a second finger takes a drag back', () => {
    const { fingers, acts } = play(down(1, 100, 100, true), move(1, 120, 100), down(2, 300, 300));
    expect(acts.at(-1)).toEqual({ kind: 'takeBack' });
    expect(fingers.kind).toBe('spent');
  });

  test('T3: two fingers that move apart zoom by the ratio of their distances, about their middle', () => {
    const { acts } = play(down(1, 100, 100), down(2, 200, 100), move(2, 300, 100));
    expect(acts).toEqual([{ kind: 'pinch', factor: 2, about: at(200, 100), by: at(50, 0) }]);
  });

  test('T4: what is left after a pinch does nothing until it is lifted', () => {
    const { fingers, acts } = play(
      down(1, 100, 100),
      down(2, 200, 100),
      up(1),
      move(2, 400, 400),
      up(2),
    );
    expect(acts).toEqual([]);
    expect(fingers).toEqual(noFingers);
  });

  test('Escape takes a drag back and the finger is spent', () => {
    const { acts } = play(
      down(1, 100, 100, true),
      move(1, 120, 100),
      { kind: 'escape' },
      move(1, 200, 200),
      up(1),
    );
    expect(acts.map((act) => act.kind)).toEqual(['grab', 'drag', 'takeBack']);
  });

  test('a finger the browser takes away takes the drag back', () => {
    const { fingers, acts } = play(down(1, 0, 0, true), move(1, 50, 0), { kind: 'lost', id: 1 });
    expect(acts.at(-1)).toEqual({ kind: 'takeBack' });
    expect(fingers).toEqual(noFingers);
  });

  test('whatever fingers do, every grab ends in one drop or one taking back, and lifting all leaves nothing', () => {
    const id = fc.integer({ min: 1, max: 3 });
    const event: fc.Arbitrary<FingerEvent> = fc.oneof(
      fc.record({
        kind: fc.constant('move' as const),
        id,
        at: fc.record({ x: fc.integer({ min: 0, max: 500 }), y: fc.integer({ min: 0, max: 500 }) }),
        slop: fc.constant(SLOP),
      }),
      fc.record({ kind: fc.constant('escape' as const) }),
    );
    const touch = fc.record({ id, grabs: fc.boolean(), lost: fc.boolean() });
    fc.assert(
      fc.property(fc.array(fc.oneof(event, touch), { maxLength: 60 }), (steps) => {
        const held = new Set<number>();
        const events: FingerEvent[] = [];
        for (const step of steps) {
          if ('kind' in step) {
            if (step.kind === 'escape' || held.has(step.id)) events.push(step);
          } else if (held.delete(step.id)) {
            events.push({ kind: step.lost ? 'lost' : 'up', id: step.id });
          } else {
            held.add(step.id);
            events.push(down(step.id, 50 * step.id, 80, step.grabs));
          }
        }
        for (const left of held) events.push(up(left));
        const { fingers, acts } = play(...events);
        expect(fingers).toEqual(noFingers);
        let holding = false;
        for (const act of acts) {
          if (act.kind === 'grab') {
            expect(holding).toBe(false);
            holding = true;
          } else if (act.kind === 'drag') expect(holding).toBe(true);
          else if (act.kind === 'drop' || act.kind === 'takeBack') {
            expect(holding).toBe(true);
            holding = false;
          }
        }
        expect(holding).toBe(false);
      }),
    );
  });
});
