import type { ViewControls } from './view/useView.ts';
import type { ScreenSize } from './view/view.ts';

const STEP = 1.4;

interface Props {
  readonly controls: ViewControls;
  readonly size: ScreenSize;
}

/** Zoom and fit for a thumb. */
export function PlanButtons({ controls, size }: Props) {
  const middle = { x: size.width / 2, y: size.height / 2 };
  return (
    <div className="plan-buttons">
      <button type="button" aria-label="Zoom in" onClick={() => controls.zoom(STEP, middle)}>
        <Sign path="M12 5v14M5 12h14" />
      </button>
      <button type="button" aria-label="Zoom out" onClick={() => controls.zoom(1 / STEP, middle)}>
        <Sign path="M5 12h14" />
      </button>
      <button type="button" aria-label={fitWords[controls.nextFit]} onClick={controls.fit}>
        <Sign path={fitSigns[controls.nextFit]} />
      </button>
    </div>
  );
}

const fitWords = { deck: 'Show the whole deck', kit: 'Show the kit large' } as const;
const fitSigns = {
  deck: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5',
  kit: 'M9 4v5H4M20 9h-5V4M15 20v-5h5M4 15h5v5',
} as const;

function Sign({ path }: { readonly path: string }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={path} />
    </svg>
  );
}
