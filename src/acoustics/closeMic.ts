import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import { type CloseEar, type CloseFigures, figuresFrom, workingDistance } from './closeFigures.ts';
import { type Aim, aimAt, type Facing, facingOf } from './facing.ts';
import type { Hearing } from './hearing.ts';
import { hearingOf, type Listener } from './listener.ts';
import { type NullTurn, turningOf, turnToNull } from './nullTurn.ts';
import type { MetresPerSecond } from './quantities.ts';
import type { Source, SurfaceName } from './source.ts';
import { type Trial, trialsOf } from './trials.ts';

/** A close mic and what it hears. */
export interface CloseMic extends CloseFigures {
  readonly mic: Id;
  readonly source: Id;
  /** The drum inside which it is, whose heads keep other pieces out (H41); its isolation is then the least it has. */
  readonly shell: Id | null;
  /** The surface it faces, and how a stroke first arrives there (H21, H22). */
  readonly head: SurfaceName;
  readonly first: Facing['first'];
  readonly sure: boolean;
  /** Null where the axis doesn't meet the head's plane. */
  readonly aim: Aim | null;
  /** H25. */
  readonly distance: Mm;
  /** The three loudest pieces that it is not there to hear, the worst first. */
  readonly worst: readonly Hearing[];
  /** Every piece with its angle off the axis, for a polar plot. */
  readonly polar: readonly Hearing[];
  readonly trials: readonly Trial[];
  /** Null where no turn helps by half a dB. */
  readonly turn: NullTurn | null;
}

const WORST = 3;

/** Everything about a mic that has a source of its own; undefined for one that hasn't. */
export function closeMic(
  listener: Listener,
  sources: readonly Source[],
  speed: MetresPerSecond,
): CloseMic | undefined {
  const { own, wanted, ear, heard, placed, shell } = listener;
  const level = own && hearingOf(listener, own)?.level;
  if (!own || level === undefined) return undefined;
  const unwanted = sources.filter((source) => !wanted.includes(source));
  const spill = unwanted
    .flatMap((source) => hearingOf(listener, source) ?? [])
    .toSorted((p, q) => q.level - p.level);
  const drums = sources.filter(({ depth }) => depth > 0);
  const close: CloseEar = { ear, own, unwanted, drums, speed };
  const now = figuresFrom(
    close,
    level,
    spill.map((hearing) => hearing.level),
  );
  const { surface, first, sure } = facingOf(ear, own);
  // Inside a shell nothing has a direction that a null could be turned to (H41).
  const turning = shell ? undefined : turningOf(placed, sources);
  const [worst] = spill;
  return {
    mic: listener.id,
    source: own.piece.id,
    shell: shell?.piece.id ?? null,
    ...now,
    head: surface.name,
    first,
    sure,
    aim: aimAt(ear, surface) ?? null,
    distance: workingDistance(ear, own).distance,
    worst: spill.slice(0, WORST),
    polar: heard,
    trials: trialsOf(close, now),
    turn: (turning && worst && turnToNull(turning, close, now, worst)) ?? null,
  };
}
