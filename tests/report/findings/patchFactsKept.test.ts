import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import { inputList } from '../../../src/patch/inputList.ts';
import { patchFacts } from '../../../src/patch/patchFacts.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { createPatchFacts } from '../../../src/report/findings/patchFactsKept.ts';
import { createRigBuilder } from '../../../src/rig/buildRig.ts';

/** Rows by number: 7 and 9 are set, so that which mics share a number hangs on the order, and that on where mics are. */
const kit: Layout = (() => {
  const made = largeKit('kit');
  const ids = made.mics.map(({ id }) => id);
  const channels = ids.flatMap((id, i) =>
    i % 3 === 0 ? [{ ...plainChannel(id, id), number: 2 + (i % 4) }] : [],
  );
  const splits = ids.slice(0, 1).map((id) => usualSplit('split', id, 'Monitors'));
  return { ...made, patch: { ...made.patch, channels, splits } };
})();

type Edit = (layout: Layout) => Layout;
const mic = fc.nat({ max: kit.mics.length - 1 });
const piece = fc.nat({ max: kit.pieces.length - 1 });
const ofMic =
  (index: number, change: (mic: Layout['mics'][number]) => object): Edit =>
  (l) => ({ ...l, mics: l.mics.map((one, i) => (i === index ? { ...one, ...change(one) } : one)) });

const edits: fc.Arbitrary<Edit> = fc.oneof(
  // From over a head to under it and back: the order of two mics of one drum may turn round.
  fc
    .tuple(mic, fc.integer({ min: -900, max: 900 }))
    .map(([index, by]) =>
      ofMic(index, ({ mount }) =>
        mount.kind === 'stand'
          ? { mount: { ...mount, tip: { ...mount.tip, z: Math.max(50, mount.tip.z + by) } } }
          : {},
      ),
    ),
  fc.tuple(mic, piece).map(
    ([index, heard]): Edit =>
      (l) =>
        ofMic(index, () => ({ hears: [l.pieces[heard]?.id ?? ''] }))(l),
  ),
  fc
    .tuple(mic, fc.option(fc.integer({ min: 1, max: 24 })))
    .map(([index, input]) => ofMic(index, () => ({ input }))),
  fc
    .tuple(mic, fc.constantFrom('ribbon', 'pencil-condenser', 'short-dynamic'))
    .map(([index, micClass]) => ofMic(index, () => ({ micClass }))),
  fc.constant<Edit>((l) => ({ ...l, mics: l.mics.toReversed() })),
  fc.constant<Edit>((l) => ({ ...l, pieces: l.pieces.toReversed() })),
  piece.map(
    (index): Edit =>
      (l) => ({
        ...l,
        pieces: l.pieces.map((one, i) =>
          i === index && 'x' in one ? { ...one, x: one.x + 10 } : one,
        ),
      }),
  ),
  fc.constant<Edit>((l) => ({ ...l, patch: { ...l.patch, splits: [] } })),
);

describe('createPatchFacts', () => {
  it('always gives the facts of the whole input list, whatever was asked before', () => {
    const build = createRigBuilder();
    fc.assert(
      fc.property(fc.array(edits, { minLength: 1, maxLength: 8 }), (given) => {
        const factsOf = createPatchFacts();
        let layout = kit;
        for (const edit of [(same: Layout) => same, ...given]) {
          layout = edit(layout);
          const rig = build(layout);
          expect(factsOf(rig, layout.patch)).toEqual(
            patchFacts(inputList(rig, layout.patch), layout.patch),
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has facts to give: the law above is not empty', () => {
    const rig = createRigBuilder()(kit);
    const codes = createPatchFacts()(rig, kit.patch).map(({ code }) => code);
    expect(codes).toContain('channel-twice');
  });

  it('gives the very same list while a mic is dragged over its drum', () => {
    const build = createRigBuilder();
    const factsOf = createPatchFacts();
    const before = factsOf(build(kit), kit.patch);
    const index = kit.mics.findIndex(({ mount }) => mount.kind === 'stand');
    const moved = ofMic(index, ({ mount }) =>
      mount.kind === 'stand'
        ? { mount: { ...mount, tip: { ...mount.tip, x: mount.tip.x + 5 } } }
        : {},
    )(kit);
    expect(factsOf(build(moved), moved.patch)).toBe(before);
  });
});
