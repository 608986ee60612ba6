import { useMemo } from 'react';
import { useOfferOutOfReach } from '../session/offerAtHand.ts';
import { leaveOffer, type OpenLayout, takeOffer, useSession } from '../session/session.ts';
import { movedSince } from './canvas/useMoving.ts';
import { offerText } from './words.ts';

/** Over a drawing of what is only offered: that it is not so yet, what the broken lines are, and its buttons where the panel's are out of view. */
export function OfferSign({ open }: { readonly open: OpenLayout }) {
  const gesture = useSession((state) => state.gesture);
  const take = useOfferOutOfReach();
  const isMoved = useMemo(() => {
    if (!gesture?.isOffer) return false;
    return movedSince({ layout: gesture.before, report: gesture.beforeReport }, open).size > 0;
  }, [gesture, open]);
  if (!gesture?.isOffer) return null;
  return (
    <div className="plan-offer">
      <p>
        <strong>{offerText.only}</strong>
      </p>
      {isMoved && (
        <p className="plan-ghost-line">
          <span className="plan-ghost" aria-hidden="true" />
          {offerText.ghost}
        </p>
      )}
      {take !== null && (
        <div className="plan-offer-buttons">
          <button type="button" className="plan-take" onClick={takeOffer}>
            {take}
          </button>
          <button type="button" onClick={leaveOffer}>
            {offerText.leave}
          </button>
        </div>
      )}
    </div>
  );
}
