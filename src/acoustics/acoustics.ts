import { remembered, sameList } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { type Air, airOf } from './air.ts';
import { type AcousticChoices, DEFAULT_CHOICES } from './choices.ts';
import { type CloseMic, closeMic } from './closeMic.ts';
import { earOf, type Hearing, hear } from './hearing.ts';
import { highPasses, type MicHighPass } from './highPass.ts';
import { type KickMics, kickMics } from './kickMics.ts';
import { type Listener, listenerOf, type MicRole } from './listener.ts';
import { heightProfile, type OverheadHeights, overheadHeights } from './overheadHeights.ts';
import {
  type OverheadFigures,
  type OverheadMic,
  type OverheadScene,
  overheadEar,
  overheadFigures,
  overheadScene,
  snareOf,
} from './overheads.ts';
import { nullAngle, type Pattern, type PatternName, patternName } from './pattern.ts';
import type { Hertz, MetresPerSecond } from './quantities.ts';
import { type Source, sourceOf } from './source.ts';
import { type PairRipple, pairRipples } from './threeToOne.ts';
import { type Timing, timingOf } from './timing.ts';

/** What one mic is there for and hears. */
export interface MicHearing {
  readonly mic: Listener['id'];
  readonly role: MicRole;
  readonly pattern: Pattern;
  /** Null between the named conventions. */
  readonly patternName: PatternName | null;
  /** Null where the pattern hears something everywhere. */
  readonly nullAngle: Degrees | null;
  /** Every piece that sounds, in the layout's order. */
  readonly heard: readonly Hearing[];
}

export interface Overheads extends OverheadFigures {
  /** Height of the highest cymbal's middle above the deck; null without cymbals. */
  readonly top: Mm | null;
  readonly heights: OverheadHeights;
}

/**
 * What the estimates leave out: rooms and what they reflect; the shadow of drums, cymbals and people, but for a shell around a mic (H41); that pieces radiate
 * unevenly; that patterns and sources change with frequency; losses in air, whose size {@link Air} tells.
 */
export const LEFT_OUT = ['reflections', 'shadows', 'radiation', 'frequency', 'air'] as const;

/** What the mics of a layout hear and when: direct sound in a free field, an estimate that leaves out {@link LEFT_OUT}. */
export interface Acoustics {
  readonly air: Air;
  /** Of every drum, said or estimated (H17), in the layout's order. */
  readonly fundamentals: readonly { readonly piece: Id; readonly hertz: Hertz }[];
  /** Every mic, in the layout's order. */
  readonly hearing: readonly MicHearing[];
  /** Close mics, in the layout's order. */
  readonly close: readonly CloseMic[];
  readonly kicks: readonly KickMics[];
  /** Null without an overhead. */
  readonly overheads: Overheads | null;
  readonly timing: Timing;
  /** The most harmful first. */
  readonly pairs: readonly PairRipple[];
  readonly highPasses: readonly MicHighPass[];
}

/** Acoustics of layouts, reusing what the last calls computed for the parts that did not change. */
export type AcousticsOf = (
  layout: Pick<Layout, 'venue'>,
  rig: Rig,
  choices?: AcousticChoices,
) => Acoustics;

/**
 * Acoustics that are computed again only for what changed: levels for a moved mic or piece, all for other choices. `choices`
 * count as the same only as the same object. Same input, same answer; the memory only saves time.
 */
export function createAcoustics(): AcousticsOf {
  const memoryFor = remembered(createMemory);
  return ({ venue }, rig, choices = DEFAULT_CHOICES) => {
    const air = airOf(venue);
    const memory = memoryFor(choices);
    const sources = memory.sources(rig);
    const listeners = rig.mics.map((placed) => memory.listener(placed, sources));
    const timing = timingOf(listeners, snareOf(sources), air.speed);
    return {
      air,
      fundamentals: sources.flatMap(({ piece, fundamental }) =>
        fundamental === undefined ? [] : [{ piece: piece.id, hertz: fundamental }],
      ),
      hearing: listeners.map(micHearing),
      close: listeners.flatMap((listener) =>
        listener.role === 'close' ? (memory.close(listener, sources, air.speed) ?? []) : [],
      ),
      kicks: kickMics(sources, listeners, timing.rows),
      overheads: memory.overheads(listeners, sources),
      timing,
      pairs: pairRipples(listeners),
      highPasses: highPasses(listeners, choices.style),
    };
  };
}

/** What is kept for one set of choices. Placed things are known by identity. */
function createMemory(choices: AcousticChoices) {
  const sourceFor = remembered((placed: Rig['pieces'][number]) => sourceOf(placed, choices));
  const same = sameList<Source>();
  const hearings = remembered((placed: PlacedMic) => {
    const ear = earOf(placed);
    const inTheOpen = remembered((source: Source) => hear(ear, source));
    const inside = remembered((shell: Source) =>
      remembered((source: Source) => hear(ear, source, shell)),
    );
    return (source: Source, shell: Source | undefined) =>
      shell ? inside(shell)(source) : inTheOpen(source);
  });
  const listeners = remembered((sources: readonly Source[]) =>
    remembered((placed: PlacedMic) => listenerOf(placed, sources, hearings(placed))),
  );
  const closeMics = remembered((listener: Listener) => {
    let last: { readonly speed: MetresPerSecond; readonly found: CloseMic | undefined } | undefined;
    return (sources: readonly Source[], speed: MetresPerSecond) => {
      if (last?.speed !== speed) last = { speed, found: closeMic(listener, sources, speed) };
      return last.found;
    };
  });
  const sameOverheads = sameList<Listener>();
  const sceneFor = remembered((sources: readonly Source[]) =>
    overheadScene(sources, choices.stageWash),
  );
  const profileFor = remembered((scene: OverheadScene) =>
    remembered((overhead: Listener) => heightProfile(overheadEar(overhead), scene)),
  );
  const overheadsFor = remembered((scene: OverheadScene) =>
    remembered((overheads: readonly Listener[]) =>
      overheadsOf(overheads, scene, profileFor(scene)),
    ),
  );
  return {
    sources: (rig: Rig) => same(rig.pieces.flatMap((placed) => sourceFor(placed) ?? [])),
    listener: (placed: PlacedMic, sources: readonly Source[]) => listeners(sources)(placed),
    close: (listener: Listener, sources: readonly Source[], speed: MetresPerSecond) =>
      closeMics(listener)(sources, speed),
    overheads: (listeners: readonly Listener[], sources: readonly Source[]) =>
      overheadsFor(sceneFor(sources))(
        sameOverheads(listeners.filter(({ role }) => role === 'overhead')),
      ),
  };
}

const micHearing = ({ id, role, ear: { pattern }, heard }: Listener): MicHearing => ({
  mic: id,
  role,
  pattern,
  patternName: patternName(pattern) ?? null,
  nullAngle: nullAngle(pattern) ?? null,
  heard,
});

function overheadsOf(
  overheads: readonly Listener[],
  scene: OverheadScene,
  profileOf: (overhead: Listener) => readonly OverheadMic[],
): Overheads | null {
  if (overheads.length === 0) return null;
  const ears = overheads.map(overheadEar);
  return {
    top: scene.top,
    ...overheadFigures(ears, scene),
    heights: overheadHeights(ears, scene, overheads.map(profileOf)),
  };
}
