import { usePanel } from '../panel/usePanel.ts';

/** Shown where mics would be. */
export function NoMicsYet() {
  const panel = usePanel();
  return (
    <div className="empty">
      <h2>No mics yet</h2>
      <p>
        Place mics on the kit, and here you read for each one whether a stick, hand or arm would
        strike it, and by how much.
      </p>
      <button type="button" className="primary" onClick={() => panel.goTo('mics')}>
        Mic up the kit
      </button>
    </div>
  );
}
