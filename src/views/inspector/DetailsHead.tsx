import { memo } from 'react';
import { select } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { Icon } from '../parts/Icon.tsx';

interface DetailsHeadProps {
  readonly kind: string;
  readonly title: string;
}

/** What the details are about, and the way back. */
export const DetailsHead = memo(function DetailsHead({ kind, title }: DetailsHeadProps) {
  const panel = usePanel();
  return (
    <header className="details-head">
      <button
        type="button"
        className="square"
        onClick={panel.closeDetails}
        aria-label="Back to the list"
      >
        <Icon name="back" />
      </button>
      <div className="details-title">
        <p className="small soft">{kind}</p>
        <h2 tabIndex={-1}>{title}</h2>
      </div>
      <button
        type="button"
        className="quiet square"
        onClick={() => select(null)}
        aria-label={`Let go of ${title}`}
      >
        <Icon name="close" />
      </button>
    </header>
  );
});
