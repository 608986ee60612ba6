import { findMicClass } from '../../layout/catalogue/micClasses.ts';
import { addMic } from '../../layout/edit/mics.ts';
import type { Layout } from '../../layout/layout.ts';
import type { RingOfMic } from '../../report/ring.ts';
import { edit, select, session } from '../../session/session.ts';
import { NO_CABLE_WAY, plannedText, ringPlaceText } from '../words.ts';
import type { AskedPlace } from './useAskedPlace.ts';

interface Props {
  readonly layout: Layout;
  readonly planned: NonNullable<RingOfMic['planned']>;
  readonly asked: AskedPlace;
}

/** What the ring of a drum without a clip is for, and the mic with one tap: where the ring was tapped, else where it is proposed. */
export function PlannedCard({ layout, planned, asked }: Props) {
  const { mic } = planned;
  const place = asked.place ?? planned.place;
  const drum = layout.pieces.find(({ id }) => id === mic.mount.drum)?.name ?? '';
  const micClass = findMicClass(layout, mic.micClass)?.name ?? '';
  const putThere = (): void => {
    const mount = { ...mic.mount, angle: place.angle };
    edit(`Clip mic for ${drum}`, (before) => addMic(before, { ...mic, mount }));
    const added = session.getState().open?.layout.mics.at(layout.mics.length);
    if (added) select({ kind: 'mic', id: added.id });
  };
  return (
    <div className="plan-card plan-planned">
      <p role={asked.place ? 'status' : undefined}>
        {plannedText(drum, micClass)}{' '}
        {ringPlaceText(place, asked.place ? 'Tapped' : 'Proposed', layout)}.
        {!asked.place && !planned.hasWay && ` ${NO_CABLE_WAY}`}
      </p>
      <button type="button" onClick={putThere}>
        Put a clip mic here
      </button>
      {asked.place && (
        <button type="button" onClick={asked.forget}>
          Close
        </button>
      )}
    </div>
  );
}
