import { gap } from '../../../geometry/plan.ts';
import type { Mm } from '../../../units/quantity.ts';
import { changeMic } from '../../edit/change.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import type { Mic } from '../../mics/mic.ts';
import type { StandMount } from '../../mics/mount.ts';
import type { Cymbal } from '../../pieces/cymbal.ts';
import { isCymbal, isStruck } from '../../pieces/piece.ts';

/** A mic that hangs over cymbals. */
export interface Overhead {
  readonly mic: Mic;
  readonly mount: StandMount;
}

/** A cymbal in the middle is for every overhead that is not more than this farther from it than the nearest. */
const AS_NEAR: Mm = 300;

/** The overheads of a layout: mics on stands above all that they hear, two or more pieces with a cymbal or hi-hat among them. */
export function overheadsOf(layout: Pick<Layout, 'mics' | 'pieces'>): readonly Overhead[] {
  return layout.mics.flatMap((mic): Overhead[] => {
    const { mount } = mic;
    if (mount.kind !== 'stand' || mic.hears.length < 2) return [];
    const heard = layout.pieces.filter(({ id }) => mic.hears.includes(id)).filter(isStruck);
    const rings = heard.some((piece) => isCymbal(piece) || piece.kind === 'hiHat');
    return rings && heard.every(({ z }) => z < mount.tip.z) ? [{ mic, mount }] : [];
  });
}

/** Whether the overheads of a layout hear at least half of some cymbals: those put down later are heard on request. */
export function areUnderOverheads(layout: Layout, cymbals: readonly Id[]): boolean {
  const heard = new Set(overheadsOf(layout).flatMap(({ mic }) => mic.hears));
  return cymbals.filter((id) => heard.has(id)).length >= cymbals.length / 2;
}

/** Cymbals that no mic hears though there are overheads that could: put down after the overheads were. */
export function unheardCymbals(layout: Layout): readonly Cymbal[] {
  const heard = new Set(layout.mics.flatMap(({ hears }) => hears));
  return layout.pieces
    .filter(isCymbal)
    .filter((cymbal) => !heard.has(cymbal.id) && over(layout, cymbal).length > 0);
}

/** A cymbal heard with the nearest overhead, and with those that are about as near. Without effect where none hangs above it. */
export function hearWithOverheads(layout: Layout, id: Id): Layout {
  const cymbal = layout.pieces.filter(isCymbal).find((piece) => piece.id === id);
  const above = cymbal ? over(layout, cymbal) : [];
  return above.reduce(
    (to, { mic }) => changeMic(to, mic.id, (from) => ({ ...from, hears: [...from.hears, id] })),
    layout,
  );
}

/** The overheads above a cymbal: the nearest on the plan and those about as near. */
function over(layout: Layout, cymbal: Cymbal): readonly Overhead[] {
  const above = overheadsOf(layout)
    .filter(({ mount }) => mount.tip.z > cymbal.z)
    .map((overhead) => ({ overhead, away: gap(overhead.mount.tip, cymbal) }));
  const nearest = Math.min(...above.map(({ away }) => away));
  return above.filter(({ away }) => away <= nearest + AS_NEAR).map(({ overhead }) => overhead);
}
