import { describe, expect, test } from 'vitest';
import { ghostsOf } from '../../src/editor/ghosts.ts';
import { palettes } from '../../src/editor/palette.ts';
import { pickablesOf } from '../../src/editor/pick/pickables.ts';
import { paintGhosts } from '../../src/editor/shapes/ghost.ts';
import { moveMicTip } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { kit, pieceOf, standMic } from './support.ts';

const start = kit('five-piece-two-racks');
const { mic, mount } = standMic(start);

/** Where things are that another layout shows elsewhere. */
function ghostsWith(shown: Layout) {
  const analyse = createAnalyst();
  const before = { layout: start, report: analyse(start) };
  const pickables = pickablesOf(start, before.report, true);
  const now = { layout: shown, report: analyse(shown) };
  return { before, ghosts: ghostsOf(before, now, pickables), pickables };
}

describe('where things are that an offer shows elsewhere', () => {
  test('nothing is told of what stays where it is', () => {
    expect(ghostsWith({ ...start, margin: start.margin + 5 }).ghosts).toEqual([]);
  });

  test('a mic that would move is told where it is, from its tip to its feet, and no other thing', () => {
    const shown = moveMicTip(start, mic.id, { x: mount.tip.x + 90, y: mount.tip.y });
    const { before, ghosts } = ghostsWith(shown);
    const placed = before.report.rig.mics.find((one) => one.mic.id === mic.id);
    const capsules = placed?.solids.map(({ capsule }) => capsule) ?? [];
    expect(capsules.length).toBeGreaterThan(3);
    for (const { a, b, radius } of capsules) {
      expect(ghosts).toContainEqual({ kind: 'line', a, b, radius });
    }
    expect(ghosts).toHaveLength(capsules.length + 1);
  });

  test('a piece that would move is told where it is, with the clip on it', () => {
    const drum = pieceOf(start, 'floorTom');
    const { ghosts } = ghostsWith(movePiece(start, drum.id, { x: drum.x + 60, y: drum.y }));
    const discs = ghosts.flatMap((ghost) => (ghost.kind === 'disc' ? [ghost.disc.centre] : []));
    expect(discs).toHaveLength(1);
    expect(discs[0]).toMatchObject({ x: drum.x, y: drum.y });
  });

  test('it is drawn as broken lines round what is there, and nothing is left set on the canvas', () => {
    const calls: string[] = [];
    let dash: readonly number[] = [];
    const saved: (readonly number[])[] = [];
    const canvas = new Proxy(
      {},
      {
        get:
          (_, name) =>
          (...given: readonly never[]) => {
            if (name === 'save') saved.push(dash);
            if (name === 'restore') dash = saved.pop() ?? [];
            if (name === 'setLineDash') [dash = []] = given;
            if (name === 'stroke') calls.push(dash.length > 0 ? 'broken' : 'whole');
            if (name === 'fill') calls.push('fill');
          },
        set: () => true,
      },
    ) as CanvasRenderingContext2D;
    const { ghosts } = ghostsWith(
      moveMicTip(start, mic.id, { x: mount.tip.x + 90, y: mount.tip.y }),
    );
    paintGhosts({ canvas, px: 5, colours: palettes.dark }, ghosts);
    expect(calls.filter((call) => call === 'broken')).toHaveLength(ghosts.length);
    expect(calls).not.toContain('fill');
    expect(dash).toEqual([]);
  });
});
