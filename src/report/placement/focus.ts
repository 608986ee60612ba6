import type { Vec2 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { toDeck } from '../../rig/deckFrame.ts';
import type { Report } from '../report.ts';
import { type Spot, spotOfBox, spotsOfMic, spotsOfPiece } from './spots.ts';
import type { SetUpStep } from './steps.ts';

/** What of the plan a step is about. Deck frame. */
export interface StepFocus {
  /** Points to measure. */
  readonly spots: readonly Spot[];
  /** Where to look, though there is nothing to measure on the deck: a mic on a clip. */
  readonly looks: readonly Vec2<'deck'>[];
  /** A cable's way, from the mic to the box. */
  readonly route: readonly Vec2<'deck'>[];
}

const NOTHING: StepFocus = { spots: [], looks: [], route: [] };

export function focusOf(
  { subject }: Pick<SetUpStep, 'subject'>,
  layout: Layout,
  { rig, runs }: Pick<Report, 'rig' | 'runs'>,
): StepFocus {
  switch (subject.kind) {
    case 'piece':
      return { ...NOTHING, spots: spotsOfPiece(subject.piece, layout) };
    case 'mic': {
      const spots = spotsOfMic(subject.mic, layout);
      const tip = rig.mics.find(({ mic }) => mic.id === subject.mic.id)?.tip;
      const looks = tip ? [toDeck(layout.deck, { x: tip.x, y: tip.y })] : [];
      return { ...NOTHING, spots, looks };
    }
    case 'box':
      return { ...NOTHING, spots: [spotOfBox(layout)] };
    case 'run': {
      const route = runs.find(({ mic }) => mic === subject.mic.id)?.route ?? [];
      return { ...NOTHING, route };
    }
    default:
      return NOTHING;
  }
}
