import { changeClip } from '../../layout/edit/mics.ts';
import type { Layout } from '../../layout/layout.ts';
import { micName } from '../../layout/mics/micName.ts';
import type { RingPlace } from '../../report/ring.ts';
import { edit } from '../../session/session.ts';
import { ringPlaceText } from '../words.ts';

interface Props {
  readonly layout: Layout;
  readonly place: RingPlace;
  forget(): void;
}

/** What the clip would be at the place of its rim that was tapped, and the way there. */
export function RingCard({ layout, place, forget }: Props) {
  const mic = layout.mics.find(({ id }) => id === place.mic);
  const name = mic ? micName(mic, layout.pieces) : '';
  const moveThere = (): void =>
    edit(`Move ${name}`, (before) => changeClip(before, place.mic, { angle: place.angle }));
  return (
    <div className="plan-card">
      <p role="status">{ringPlaceText(place, name, layout)}</p>
      <button type="button" onClick={moveThere}>
        Move it there
      </button>
      <button type="button" onClick={forget}>
        Close
      </button>
    </div>
  );
}
