import { describe, expect, test } from 'vitest';
import { mirrorKit } from '../../../src/layout/edit/mirror.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Mic } from '../../../src/layout/mics/mic.ts';
import { isStruck, type Piece } from '../../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { Finding, FindingCode } from '../../../src/report/report.ts';
import { seededKits } from '../../support/randomKit.ts';

/** Of what cables, inputs and the way out say: box and stairs stand where they stand when a kit is mirrored or loses a piece. */
const OF_THE_STAGE = /^(run|stock|input|more-mics|lane|stairs|box|sign-off)-?/;
const ofTheKit = (layout: Layout): readonly Finding[] =>
  createAnalyst()(layout).findings.filter(({ code }) => !OF_THE_STAGE.test(code));

/** Random kits on a deck that is its own mirror image, and small enough that feet stand beyond its edge. */
const kits = seededKits(25, 117).map(
  (layout): Layout => ({
    ...layout,
    deck: { ...layout.deck, width: 2600, depth: 2400, kit: { x: 0, y: -400, turn: 0 }, stairs: [] },
  }),
);

const byKey = (findings: readonly Finding[]): ReadonlyMap<string, Finding> =>
  new Map(findings.map((finding) => [finding.key, finding]));

test('these kits have findings of many kinds', () => {
  const codes = new Set<FindingCode>(kits.flatMap(ofTheKit).map(({ code }) => code));
  for (const code of ['mic-struck', 'mic-tight', 'piece-out-of-reach', 'base-off-deck'] as const) {
    expect(codes).toContain(code);
  }
  expect(codes.size).toBeGreaterThan(8);
});

/** What is told of one hand is told of the other one in the mirror. */
const inMirror = (name: string): string => ({ left: 'right', right: 'left' })[name] ?? name;

test('a mirrored kit has the same findings with the same numbers, hands and sides changed over', () => {
  for (const kit of kits) {
    const here = byKey(ofTheKit(kit));
    const there = byKey(ofTheKit(mirrorKit(kit)));
    expect([...there.keys()].toSorted(), kit.name).toEqual([...here.keys()].toSorted());
    for (const [key, { code, severity, about, numbers, place }] of here) {
      const other = there.get(key);
      expect([other?.code, other?.severity, other?.about], key).toEqual([code, severity, about]);
      for (const [name, value] of Object.entries(numbers)) {
        // Directions turn round in the mirror; all else is measured.
        if (/turn|angle|azimuth|side/.test(name)) continue;
        expect(other?.numbers[inMirror(name)], `${key} ${name}`).toBeCloseTo(value, 1);
      }
      expect(place === undefined, key).toBe(other?.place === undefined);
    }
  }
});

describe('a larger margin', () => {
  test('makes no mic clearer, and changes nothing that is not about the margin', () => {
    const rank = { 'mic-struck': 2, 'mic-tight': 1 } as const;
    const rankOf = (findings: readonly Finding[], mic: string): number =>
      Math.max(
        0,
        ...findings
          .filter(({ about }) => about[0] === mic)
          .map(({ code }) => (code === 'mic-struck' || code === 'mic-tight' ? rank[code] : 0)),
      );
    const isOfMargin = ({ code }: Finding): boolean =>
      code === 'mic-struck' || code === 'mic-tight' || code === 'mic-near-player';
    const others = (findings: readonly Finding[]) =>
      findings
        .filter((finding) => !isOfMargin(finding))
        .map(({ key, severity, numbers }) => ({ key, severity, numbers }))
        .toSorted((a, b) => (a.key < b.key ? -1 : 1));
    for (const kit of kits) {
      const [small, large] = [20, 90].map((margin) => ofTheKit({ ...kit, margin }));
      if (!small || !large) throw new Error('two lists were expected');
      for (const { id } of kit.mics) {
        expect(rankOf(large, id), id).toBeGreaterThanOrEqual(rankOf(small, id));
      }
      expect(others(large), kit.name).toEqual(others(small));
      const near = small.filter(({ code }) => code === 'mic-near-player');
      for (const { key } of near) expect(byKey(large).has(key), key).toBe(true);
    }
  });
});

/** Whether nothing else of the kit stands on a piece, is held by it or plays it. */
const isFree = ({ pieces, mics }: Layout, { id }: Piece): boolean =>
  !mics.some(({ mount }) => Object.values(mount).includes(id)) &&
  !pieces.some(
    (piece) =>
      piece.id !== id &&
      (Object.values(piece).includes(id) ||
        ('support' in piece && piece.support.kind === 'held' && piece.support.by === id)),
  );

test('a piece that is taken away takes its own findings along, and makes no other thing worse', () => {
  const worse = { stop: 2, warn: 1, note: 0 } as const;
  let taken = 0;
  for (const kit of kits) {
    const before = byKey(ofTheKit(kit));
    for (const gone of kit.pieces.filter((piece) => isStruck(piece) && isFree(kit, piece))) {
      taken++;
      const mics = kit.mics.map(
        (mic): Mic => ({
          ...mic,
          hears: mic.hears.filter((id) => id !== gone.id),
        }),
      );
      const pieces = kit.pieces.filter((piece) => piece !== gone);
      for (const finding of ofTheKit({ ...kit, pieces, mics })) {
        const { key, code, about, severity } = finding;
        expect(about).not.toContain(gone.id);
        // Who heard the piece alone may now be far from the next one, and who is left with one may be no close mic of it.
        if (code === 'mic-far-away' || code === 'mic-not-close') continue;
        const was =
          before.get(key) ??
          (code === 'mic-tight' ? before.get(`mic-struck:${about[0]}`) : undefined);
        expect(was, `${kit.name} without ${gone.id}: ${key}`).toBeDefined();
        expect(worse[severity]).toBeLessThanOrEqual(worse[was?.severity ?? 'note']);
      }
    }
  }
  expect(taken).toBeGreaterThan(20);
});
