import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carrierOf } from '../../../src/layout/references.ts';
import { setUpSteps } from '../../../src/report/placement/steps.ts';
import { startingKit } from '../../sheet/samples.ts';
import { randomKit } from '../../support/randomKit.ts';

const runsOf = (layout: {
  readonly mics: readonly { readonly id: string; readonly input: number | null }[];
}) => layout.mics.map(({ id, input }) => ({ mic: id, input }));

describe('the steps of setting up', () => {
  test('place everything once, each with a key of its own', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const keys = setUpSteps(layout, runsOf(layout)).map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
        expect(new Set(keys)).toEqual(
          new Set([
            'deck',
            'box',
            'check',
            ...layout.pieces.map(({ id }) => `piece:${id}`),
            ...layout.mics.flatMap(({ id }) => [`mic:${id}`, `run:${id}`]),
          ]),
        );
      }),
    );
  });

  test('place a carrier before what it holds (P2)', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const keys = setUpSteps(layout, []).map(({ key }) => key);
        for (const piece of layout.pieces) {
          const by = carrierOf(piece);
          if (by === undefined) continue;
          expect(keys.indexOf(`piece:${by}`)).toBeLessThan(keys.indexOf(`piece:${piece.id}`));
        }
      }),
    );
  });

  test('go from the marks to the check (P1), cables by their inputs', () => {
    const layout = startingKit('large-kit');
    const steps = setUpSteps(layout, runsOf(layout).toReversed());
    expect(steps.slice(0, 4).map(({ key }) => key)).toEqual([
      'deck',
      'piece:throne',
      'piece:kick',
      'piece:pedal-kick',
    ]);
    expect(steps.at(-1)?.key).toBe('check');
    const runs = steps.flatMap(({ subject }) =>
      subject.kind === 'run' ? [subject.mic.input] : [],
    );
    expect(runs).toEqual(runs.toSorted((a, b) => (a ?? 99) - (b ?? 99)));
  });
});
