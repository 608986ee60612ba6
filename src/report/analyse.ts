import { createCables } from '../cabling/cables.ts';
import { createCablingFacts } from '../cabling/cablingFacts.ts';
import { runTotals } from '../cabling/runTotals.ts';
import { createAgainstPlayer } from '../clearance/againstPlayer.ts';
import { createClearances } from '../clearance/clearances.ts';
import { remembered } from '../geometry/remembered.ts';
import type { Layout } from '../layout/layout.ts';
import type { Player } from '../layout/player.ts';
import { createRigBuilder } from '../rig/buildRig.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { createStandingFinder } from '../rig/standing/findStanding.ts';
import { cableFindings } from './findings/cableFindings.ts';
import { clearanceFindings } from './findings/clearanceFindings.ts';
import { distanceFindings } from './findings/distanceFindings.ts';
import { createPatchFacts } from './findings/patchFactsKept.ts';
import { patchFindings } from './findings/patchFindings.ts';
import { playerFindings } from './findings/playerFindings.ts';
import { reachFindings } from './findings/reachFindings.ts';
import { signOffFindings } from './findings/signOffFindings.ts';
import { sortedFindings } from './findings/sortedFindings.ts';
import { standFindings } from './findings/standFindings.ts';
import { standingFindings } from './findings/standingFindings.ts';
import { standsInSwing } from './findings/standsInSwing.ts';
import { boardIsTold, shinIsTold } from './findings/toldWithPlayer.ts';
import { unplayedFindings } from './findings/unplayedFindings.ts';
import { playerFacts } from './playerFacts.ts';
import type { Report } from './report.ts';
import { createSignOffReader } from './signOffState.ts';

type Pieces = Layout['pieces'];

/**
 * Analyses layouts, reusing what the last call computed for the parts that did not change. In a hurry, while something is dragged,
 * cables are gathered by fewer trials: a loom that keeps all its rules, with its true lengths, perhaps not the neatest; and clearances may differ
 * by up to 0.05 mm from those at rest.
 */
export interface Analyst {
  (layout: Layout, inHurry?: boolean): Report;
  /** Only where everything is: the rig that the report of this layout would have. */
  place(layout: Layout): Report['rig'];
}

/** An analyst with a memory of its own. Same layout, same report; the memory only saves time. */
export function createAnalyst(): Analyst {
  const rigOf = createRigBuilder();
  const clearancesOf = createClearances();
  const standingOf = createStandingFinder();
  const againstPlayerOf = createAgainstPlayer();
  const cablesOf = createCables();
  const cablingFactsOf = createCablingFacts();
  const signOffOf = createSignOffReader();
  const patchFactsOf = createPatchFacts();
  const factsOf = remembered((player: Player) =>
    remembered((pieces: Pieces) => playerFacts({ player, pieces })),
  );
  const reachOf = remembered((player: Player) => remembered(reachFindings(player)));
  const standOf = remembered(standFindings);
  const distanceOf = remembered((pieces: Report['rig']['pieces']) =>
    remembered((placed: PlacedMic) => distanceFindings(placed, pieces)),
  );
  const analyse = (layout: Layout, inHurry?: boolean): Report => {
    const rig = rigOf(layout);
    const clearances = clearancesOf(layout, rig.mics, inHurry);
    const cables = cablesOf(layout, rig, inHurry);
    const signOff = signOffOf(layout, rig);
    const standing = standingOf(rig, layout.deck);
    const againstPlayer = rig.mics.flatMap(againstPlayerOf(layout));
    const moved = clearances.filter(
      (row) => !standing.some((one) => standsInSwing(row, one)) && !shinIsTold(row, againstPlayer),
    );
    const findings = sortedFindings([
      ...clearanceFindings(moved),
      ...rig.mics.flatMap(standOf),
      ...rig.mics.flatMap(distanceOf(rig.pieces)),
      ...playerFindings(againstPlayer, layout.margin),
      ...standingFindings(standing.filter((one) => !boardIsTold(one, againstPlayer))),
      ...cableFindings(cablingFactsOf(layout, cables)),
      ...layout.pieces.flatMap(reachOf(layout.player)),
      ...unplayedFindings(layout.player, layout.pieces),
      ...patchFindings(patchFactsOf(rig, layout.patch), rig),
      ...signOffFindings(signOff, rig),
    ]);
    const { runs, loom, stock } = cables;
    const totals = runTotals(runs);
    const player = factsOf(layout.player)(layout.pieces);
    return { rig, clearances, findings, runs, loom, stock, totals, player, signOff };
  };
  return Object.assign(analyse, { place: rigOf });
}
