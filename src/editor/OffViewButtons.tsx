import { memo } from 'react';
import type { Layout } from '../layout/layout.ts';
import type { OffView } from './offView.ts';
import { Sign } from './Sign.tsx';
import { offViewText } from './words.ts';

interface Props {
  readonly layout: Layout;
  readonly off: readonly OffView[];
  showAll(): void;
}

/** At the edges of the plan: what lies beyond them, and a tap to see it. */
export const OffViewButtons = memo(function OffViewButtons({ layout, off, showAll }: Props) {
  return off.map(({ edge, at, bearing, things }) => (
    <button
      key={edge}
      type="button"
      className={`plan-off plan-off-${edge}`}
      style={{ left: at.x, top: at.y }}
      onClick={showAll}
    >
      <span style={{ transform: `rotate(${bearing}deg)` }}>
        <Sign path="M12 20V5M6 11l6-6 6 6" />
      </span>
      {offViewText(layout, things)}
    </button>
  ));
});
