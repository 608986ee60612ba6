import { useEffect, useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { isDrum } from '../../layout/pieces/piece.ts';
import {
  type SwapOffer,
  type SwapPlan,
  type SwapRow,
  swapIn,
  swapOffers,
  takeSwapOffer,
} from '../../report/swapOffer.ts';
import type { PlanMark } from '../../session/patchView.ts';
import { edit, showPatch, useSession } from '../../session/session.ts';
import { showLength } from '../../units/lengthText.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { counted, nameOf } from '../words/nameOf.ts';
import { swapMarkWords, swapOfferWords, swapStepWords } from '../words/swapWords.ts';
import { usePlanMarks } from './usePlanMarks.ts';

/** What to undo before a drum comes out, the snare unless another is chosen. */
export function SwapPart() {
  const { layout, report } = useOpen();
  const chosen = useSession((state) => state.patchView.drum);
  const drums = layout.pieces.filter(isDrum);
  const drum =
    drums.find(({ id }) => id === chosen) ?? drums.find(({ kind }) => kind === 'snare') ?? drums[0];
  const swap = drum ? swapIn(report, drum.id) : null;
  if (!drum || !swap) return <p className="empty">There is no drum to lift out.</p>;
  return (
    <>
      <SelectField
        label="Drum to lift out"
        value={drum.id}
        options={drums.map(({ id, name }) => ({ value: id, text: name }))}
        onChoose={(id) => showPatch({ drum: id })}
      />
      <SwapSteps swap={swap} />
      <SwapOffers swap={swap} />
      <p className="field-hint">
        Mute before you unplug, and let 48 V go off first. Put things back from the last to the
        first.
      </p>
    </>
  );
}

function SwapSteps({ swap }: { readonly swap: SwapPlan }) {
  const { layout } = useOpen();
  const panel = usePanel();
  const { drum, rise, steps } = swap;
  usePlanMarks({ shows: 'swap', marks: marksOf(swap) });
  const point = ({ about }: SwapRow) => {
    const isMic = layout.mics.some(({ id }) => id === about);
    panel.point(null, { kind: isMic ? 'mic' : 'piece', id: about });
  };
  const up = showLength(rise, layout.units);
  return (
    <>
      <p role="status" className="swap-count">
        {steps.length === 0
          ? `Nothing to undo. Lift ${nameOf(layout, drum)} straight up by ${up}.`
          : `${counted(steps.length, 'thing')} to undo, then lift it straight up by ${up}.`}
      </p>
      <ol className="lines" aria-label="To undo">
        {steps.map((step, index) => (
          <li key={`${step.what} ${step.about}`} className="line">
            <button type="button" className="line-button" onClick={() => point(step)}>
              <span className="channel-number">{index + 1}</span>
              <span className="line-text">{swapStepWords(step, drum, layout)}</span>
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}

/** One mark for each thing, with all its numbers. */
function marksOf({ drum, steps }: SwapPlan): readonly PlanMark[] {
  const numbered = steps.map((step, index) => ({ ...step, number: index + 1 }));
  return [...new Set(steps.map(({ about }) => about))].map((about): PlanMark => {
    const own = numbered.filter((step) => step.about === about);
    return {
      about,
      sign: 'undo',
      texts: [
        own.map((step) => `${step.number} ${swapMarkWords(step, drum)}`).join(', '),
        own.map(({ number }) => number).join(', '),
      ],
    };
  });
}

function SwapOffers({ swap }: { readonly swap: SwapPlan }) {
  const { layout } = useOpen();
  const offers = useSwapOffers(swap.drum);
  if (offers === null) return <p role="status">Looking for a way with fewer things to undo…</p>;
  if (offers.length === 0) {
    return <p className="soft">No other way of holding a mic here leaves fewer things to undo.</p>;
  }
  return (
    <section className="group">
      <h3>With fewer</h3>
      {offers.map((offer) => (
        <div key={offer.mic} className="swap-offer">
          <p>{swapOfferWords(offer, swap.steps.length, layout)}</p>
          <button
            type="button"
            onClick={() => edit(stepName(offer, layout), (from) => takeSwapOffer(from, offer))}
          >
            Take it<span className="spoken">: {nameOf(layout, offer.mic)}</span>
          </button>
        </div>
      ))}
    </section>
  );
}

const stepName = ({ kind, mic }: SwapOffer, layout: Layout): string =>
  kind === 'boomForClip' ? `Boom for ${nameOf(layout, mic)}` : `Boom of ${nameOf(layout, mic)}`;

/** Looked for once nothing is being dragged and the list has been drawn; null until then. */
function useSwapOffers(drum: Id): readonly SwapOffer[] | null {
  const { layout, report } = useOpen();
  const isStill = useSession((state) => state.gesture === null);
  const [offers, setOffers] = useState<readonly SwapOffer[] | null>(null);
  useEffect(() => {
    setOffers(null);
    if (!isStill) return undefined;
    const wait = setTimeout(() => {
      const swap = swapIn(report, drum);
      setOffers(swap ? swapOffers(layout, report, swap) : []);
    }, 50);
    return () => clearTimeout(wait);
  }, [isStill, layout, report, drum]);
  return offers;
}
