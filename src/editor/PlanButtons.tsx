import { memo, useId, useState } from 'react';
import { Sign } from './Sign.tsx';
import type { ViewControls } from './view/useView.ts';
import { planKeys } from './words.ts';

const STEP = 1.4;

/** Zoom and fit for a thumb. */
export const ZoomButtons = memo(function ZoomButtons({ controls }: { controls: ViewControls }) {
  return (
    <div className="plan-buttons">
      <button type="button" aria-label="Zoom in" onClick={() => controls.zoomStep(STEP)}>
        <Sign path="M12 5v14M5 12h14" />
      </button>
      <button type="button" aria-label="Zoom out" onClick={() => controls.zoomStep(1 / STEP)}>
        <Sign path="M5 12h14" />
      </button>
      <button type="button" aria-label={fitWords[controls.nextFit]} onClick={controls.fit}>
        <Sign path={fitSigns[controls.nextFit]} />
      </button>
    </div>
  );
});

const fitWords = { deck: 'Show the whole deck', kit: 'Show the kit large' } as const;
const fitSigns = {
  deck: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5',
  kit: 'M9 4v5H4M20 9h-5V4M15 20v-5h5M4 15h5v5',
} as const;

/** The list of keys, where there is a keyboard to expect. */
export const KeyList = memo(function KeyList() {
  const [shown, setShown] = useState(false);
  const list = useId();
  return (
    <div className="plan-keys">
      <button
        type="button"
        aria-label="Keys"
        aria-expanded={shown}
        aria-controls={shown ? list : undefined}
        onClick={() => setShown(!shown)}
      >
        <Sign path="M3 7h18v10H3zM7 10.5h.01M10.3 10.5h.01M13.7 10.5h.01M17 10.5h.01M8 14h8" />
      </button>
      {shown && (
        <dl id={list}>
          {planKeys.map(([keys, what]) => (
            <div key={keys}>
              <dt>{keys}</dt>
              <dd>{what}</dd>
            </div>
          ))}
        </dl>
      )}
    </div>
  );
});
