import { micGroups } from '../../layout/catalogue/offered/offeredMics.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';

/** Shown where mics would be, with the way to the first one. */
export function NoMicsYet() {
  const { layout } = useOpen();
  const panel = usePanel();
  const hasSources = micGroups(layout).length > 0;
  return (
    <div className="empty">
      <h2>No mics yet</h2>
      <p>
        {hasSources ? 'Place mics on the kit' : 'Add drums and cymbals, then mics'}, and here you
        read for each mic whether a stick, hand or arm would strike it, and by how much.
      </p>
      <button
        type="button"
        className="primary"
        onClick={() => panel.goTo(hasSources ? 'mics' : 'kit')}
      >
        {hasSources ? 'Mic up the kit' : 'Add the first piece'}
      </button>
    </div>
  );
}
