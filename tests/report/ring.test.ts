import { describe, expect, it } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { changeClip } from '../../src/layout/edit/mics.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { createFieldFinder } from '../../src/report/fields.ts';
import { placeOnRing, ringOf } from '../../src/report/ring.ts';

const kit = fivePieceOneRack('kit');
const clips = kit.mics.filter(({ mount }) => mount.kind === 'clip');

describe('the rim ring of a mic', () => {
  it('goes once round, its arcs joined end to end, no two alike beside each other', () => {
    for (const { id } of clips) {
      const arcs = ringOf(kit, id)?.arcs ?? [];
      expect(arcs[0]?.from).toBe(0);
      expect(arcs.at(-1)?.to).toBe(360);
      for (const [i, arc] of arcs.slice(1).entries()) {
        expect(arc.from).toBe(arcs[i]?.to);
        expect(arc.verdict).not.toBe(arcs[i]?.verdict);
      }
    }
  });

  it('R1: says what the mic is said to be when it is put there, in the middle of every arc and a degree inside its ends', () => {
    const analyse = createAnalyst();
    for (const { id } of clips) {
      for (const { verdict, from, to } of ringOf(kit, id)?.arcs ?? []) {
        if (to - from < 2) continue;
        for (const angle of [(from + to) / 2, from + 1, to - 1]) {
          const there = changeClip(kit, id, { angle });
          const row = analyse(there).clearances.find(({ mic }) => mic === id);
          expect(row?.verdict).toBe(verdict);
          const place = placeOnRing(kit, id, angle);
          expect(place).toMatchObject({ mic: id, angle, verdict });
          expect(place?.clearance).toBeCloseTo(row?.clearance ?? Number.NaN, 6);
        }
      }
    }
  });

  it('is none for a mic on a stand, or one that is not there', () => {
    const stand = kit.mics.find(({ mount }) => mount.kind === 'stand');
    for (const id of [stand?.id ?? '', 'nobody']) {
      expect(ringOf(kit, id)).toBeNull();
      expect(placeOnRing(kit, id, 90)).toBeNull();
    }
  });
});

it('what comes by message is computed as what is at hand, whatever was asked before', () => {
  const finder = createFieldFinder();
  const large = largeKit('large');
  for (const layout of [kit, kit, large, kit]) {
    const sent = structuredClone(layout);
    const clip = sent.mics.find(({ mount }) => mount.kind === 'clip')?.id ?? '';
    expect(finder.ring(sent, clip)).toEqual(ringOf(layout, clip));
  }
});
