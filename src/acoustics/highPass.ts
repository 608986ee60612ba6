import type { Id } from '../layout/fields.ts';
import type { SoundingKind, Style } from './choices.ts';
import type { Listener } from './listener.ts';
import type { Hertz } from './quantities.ts';

/** What a mic is filtered as. */
export type HighPassSource =
  | 'kick'
  | 'snare'
  | 'rackTom'
  | 'floorTom'
  | 'hiHat'
  | 'cymbal'
  | 'percussion'
  | 'overhead';

/**
 * Why: rumble of the stage below what the drum plays; spill of kick and bass; room left for kick and bass in a dense mix;
 * drums come from their own mics and overheads give cymbals; overheads carry the whole kit; soft playing keeps its body;
 * the drum's own fundamental sets the limit.
 */
export type HighPassReason =
  | 'stageRumble'
  | 'lowSpill'
  | 'denseMix'
  | 'overheadsForCymbals'
  | 'overheadsCarryKit'
  | 'keepBody'
  | 'keepFundamental';

/** Where to start with a high-pass: a range, not a rule. */
export interface HighPass {
  readonly low: Hertz;
  readonly high: Hertz;
  readonly reasons: readonly HighPassReason[];
}

type Ranges = Readonly<Record<HighPassSource, readonly [low: Hertz, high: Hertz]>>;

/** H39 Starting points by style: common practice from memory, no source. */
const ranges: Readonly<Record<Style, Ranges>> = {
  rock: {
    kick: [30, 40],
    snare: [80, 120],
    rackTom: [60, 80],
    floorTom: [40, 60],
    hiHat: [250, 400],
    cymbal: [250, 400],
    percussion: [150, 250],
    overhead: [200, 400],
  },
  pop: {
    kick: [30, 40],
    snare: [90, 120],
    rackTom: [60, 90],
    floorTom: [45, 60],
    hiHat: [300, 450],
    cymbal: [250, 400],
    percussion: [150, 250],
    overhead: [150, 300],
  },
  jazz: {
    kick: [20, 30],
    snare: [50, 80],
    rackTom: [40, 60],
    floorTom: [30, 45],
    hiHat: [120, 200],
    cymbal: [100, 180],
    percussion: [80, 150],
    overhead: [30, 60],
  },
  bigBand: {
    kick: [25, 35],
    snare: [60, 90],
    rackTom: [50, 70],
    floorTom: [35, 50],
    hiHat: [150, 250],
    cymbal: [120, 200],
    percussion: [100, 180],
    overhead: [50, 100],
  },
  worship: {
    kick: [30, 40],
    snare: [80, 120],
    rackTom: [60, 80],
    floorTom: [40, 60],
    hiHat: [250, 400],
    cymbal: [200, 350],
    percussion: [150, 250],
    overhead: [120, 250],
  },
  metal: {
    kick: [35, 50],
    snare: [100, 150],
    rackTom: [70, 100],
    floorTom: [50, 70],
    hiHat: [350, 600],
    cymbal: [300, 500],
    percussion: [180, 300],
    overhead: [300, 600],
  },
};

const isSoft = (style: Style): boolean => style === 'jazz' || style === 'bigBand';

/** H39 The range of a source in a style. */
export function highPassFor(style: Style, source: HighPassSource): HighPass {
  const [low, high] = ranges[style][source];
  return { low, high, reasons: reasonsFor(style, source) };
}

function reasonsFor(style: Style, source: HighPassSource): readonly HighPassReason[] {
  if (source === 'overhead') return [isSoft(style) ? 'overheadsCarryKit' : 'overheadsForCymbals'];
  if (source === 'kick') return [isSoft(style) ? 'keepBody' : 'stageRumble'];
  return isSoft(style) ? ['lowSpill', 'keepBody'] : ['lowSpill', 'denseMix'];
}

/** A mic with its starting point. */
export interface MicHighPass extends HighPass {
  readonly mic: Id;
  readonly source: HighPassSource;
}

/** H40 A drum's filter starts at most here, as a share of its fundamental (common practice, no source). */
const BELOW_FUNDAMENTAL = 0.8;

/** H40 Starting points of all mics that hear something; a close mic of a drum never starts above 0.8 of its fundamental. */
export const highPasses = (listeners: readonly Listener[], style: Style): readonly MicHighPass[] =>
  listeners.flatMap(({ id, role, own }) => {
    if (!own) return [];
    const source = role === 'overhead' ? 'overhead' : filteredAs(own.piece.kind);
    const start = highPassFor(style, source);
    const limit =
      role === 'close' && own.fundamental !== undefined
        ? BELOW_FUNDAMENTAL * own.fundamental
        : Number.POSITIVE_INFINITY;
    if (limit >= start.high) return [{ mic: id, source, ...start }];
    return [
      {
        mic: id,
        source,
        low: Math.min(start.low, limit),
        high: limit,
        reasons: [...start.reasons, 'keepFundamental' as const],
      },
    ];
  });

function filteredAs(kind: SoundingKind): HighPassSource {
  switch (kind) {
    case 'crash':
    case 'ride':
    case 'splash':
    case 'china':
      return 'cymbal';
    default:
      return kind;
  }
}
