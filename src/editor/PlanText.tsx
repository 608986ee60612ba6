import { useEffect, useState } from 'react';
import type { FloorReport } from '../report/floor.ts';
import type { RingOfMic } from '../report/ring.ts';
import type { ForbiddenZone } from '../report/zone.ts';
import type { Selection } from '../session/selection.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { floorText, ringText, spokenKeys, spokenSelection, zoneText } from './words.ts';

interface Props {
  readonly id: string;
  readonly open: OpenLayout;
  readonly selection: Selection | null;
  readonly zone: ForbiddenZone | null;
  readonly ring: RingOfMic | null;
  readonly floor: FloorReport | null;
}

/** What the plan says in words: how it is used, what is selected, what the hatch means. */
export function PlanText({ id, open, selection, zone, ring, floor }: Props) {
  const showZone = useSession((state) => state.preferences.showZone);
  const isMic = selection?.kind === 'mic' && zone?.mic === selection.id;
  return (
    <>
      <p id={id} className="plan-spoken">
        {spokenKeys}
        {ring && ` ${ringText(ring)}`}
      </p>
      <p className="plan-spoken" role="status">
        {useSettled(spokenSelection(open.layout, open.report, selection))}
      </p>
      <div className="plan-legends">
        {showZone && isMic && zone.rings.length > 0 && (
          <p>
            <span className="plan-hatch" aria-hidden="true" />
            {zoneText(zone.height, open.layout.units)}
          </p>
        )}
        {floor && (
          <p>
            <span className="plan-contour" aria-hidden="true" />
            {floorText(open.layout.units)}
          </p>
        )}
      </div>
    </>
  );
}

/** Nobody can listen to every frame of a drag: the text is said when it has stood still for a moment. */
const STILL = 350;

function useSettled(text: string): string {
  const [settled, setSettled] = useState(text);
  useEffect(() => {
    const wait = setTimeout(() => setSettled(text), STILL);
    return () => clearTimeout(wait);
  }, [text]);
  return settled;
}
