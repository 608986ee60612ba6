import { useEffect, useRef } from 'react';
import { tellOutOfReach } from '../../session/offerAtHand.ts';
import { leaveOffer, takeOffer } from '../../session/session.ts';

interface OfferButtonsProps {
  readonly take: string;
}

/** What is shown is taken as one step, or left as if nothing had been. The focus comes here where it was lost with the search. */
export function OfferButtons({ take }: OfferButtonsProps) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (document.activeElement === document.body) first.current?.focus({ preventScroll: true });
  }, []);
  useEffect(() => {
    if (!first.current) return undefined;
    const observer = new IntersectionObserver((entries) => {
      const last = entries.at(-1);
      if (last) tellOutOfReach(last.isIntersecting ? null : take);
    });
    observer.observe(first.current);
    return () => {
      observer.disconnect();
      tellOutOfReach(null);
    };
  }, [take]);
  return (
    <div className="buttons">
      <button ref={first} type="button" className="primary" onClick={takeOffer}>
        {take}
      </button>
      <button type="button" onClick={leaveOffer}>
        Leave it
      </button>
    </div>
  );
}
