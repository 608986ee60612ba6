import { type BoxSpots, boxSpots, USUAL_SPOTS } from '../../src/cabling/boxSpots.ts';
import { type Cables, createCables } from '../../src/cabling/cables.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import type { Rig } from '../../src/rig/placed.ts';
import { measure, measureRatio, type Times } from './measure.ts';
import { type Checksum, fourfoldMics, largest, withMovedMic } from './timings.ts';

/** The largest starting kit on a deck whose front edge is 8 m long. */
const wide: Layout = { ...largest, deck: { ...largest.deck, width: 8000 } };

/** Routing, loom and stock of the largest kit, and how many times as long they take for four times the mics; the same after one moved mic, at rest and while it is dragged; box spots along 8 m. */
export function timesOfCables(checksum: Checksum) {
  const add = (all: readonly Cables[]): void => {
    for (const { runs, loom } of all) checksum.add(loom.laid, ...runs.map(({ total }) => total));
  };
  return {
    all: measure({ warmUp: 20, runs: 20 }, layingOf(largest), add),
    fourfold: measureRatio({ warmUp: 5, runs: 10 }, layingOf(fourfoldMics), layingOf(largest), add),
    moved: timesOfMoved(false, add),
    dragged: timesOfMoved(true, add),
    spots: measure(
      { warmUp: 2, runs: 5 },
      () => spotsAlong(wide),
      (all) => checksum.add(...all.map(({ byCable }) => byCable[0]?.cable ?? 0)),
    ),
  };
}

type Add = (all: readonly Cables[]) => void;

function layingOf(layout: Layout): () => Cables {
  const rig = buildRig(layout);
  return () => createCables()(layout, rig);
}

function timesOfMoved(inHurry: boolean, add: Add): Times {
  const cables = createCables();
  // As the analyst does: what did not move comes as the same placed objects.
  const rigOf = createRigBuilder();
  cables(largest, rigOf(largest));
  const moved = Array.from({ length: 128 }, (_, run): readonly [Layout, Rig] => {
    const layout = withMovedMic(largest, run);
    return [layout, rigOf(layout)];
  });
  const work = (run: number): Cables => {
    const [layout, rig] = moved[run % moved.length] ?? [largest, buildRig(largest)];
    return cables(layout, rig, inHurry);
  };
  return measure({ warmUp: 128, runs: 128 }, work, add);
}

function spotsAlong(layout: Layout): BoxSpots {
  const search = boxSpots(layout, buildRig(layout), { ...USUAL_SPOTS, edges: ['front'] });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}
