import { memo, type Ref, useLayoutEffect, useState } from 'react';
import type { Selection } from '../session/selection.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { FloorLegend } from './FloorLegend.tsx';
import { OfferSign } from './OfferSign.tsx';
import {
  againText,
  floorLate,
  marksText,
  noWayText,
  ringText,
  spokenKeys,
  spokenSelection,
  zoneLate,
  zoneText,
} from './words.ts';

interface Props {
  readonly id: string;
  readonly open: OpenLayout;
  /** Whether what only the plan draws is explained. */
  readonly explains: boolean;
  /** Gets the corner where the legends stand. */
  readonly legends: Ref<HTMLDivElement>;
  /** Everything that the last tap can mean, the likeliest first. */
  readonly here: readonly Selection[];
  /** What has just happened, for a moment; null: nothing to tell. */
  readonly note: string | null;
}

/** What the plan says in words: how it is used, what is selected, what the hatch means. */
export const PlanText = memo(function PlanText(props: Props) {
  const { id, open, explains, legends, here, note } = props;
  const selection = useSession((state) => state.selection);
  const zone = useSession((state) => state.zone);
  const zoneIsOld = useSession((state) => state.zoneIsOld);
  const ring = useSession((state) => state.ring);
  const floor = useSession((state) => state.floor);
  const marks = useSession((state) => state.marks);
  const showZone = useSession((state) => state.preferences.showZone);
  const showFloor = useSession((state) => state.preferences.showFloor);
  const showRuns = useSession((state) => state.preferences.showRuns);
  const lost = open.report.runs.filter(({ through }) => through.length > 0).length;
  const isMic = selection?.kind === 'mic' && zone?.mic === selection.id;
  const again = againText(open.layout, here, selection);
  return (
    <>
      <p id={id} className="plan-spoken">
        {useSettled(ring ? `${spokenKeys} ${ringText(ring)}` : spokenKeys)}
      </p>
      <p className="plan-spoken" role="status">
        {useSettled(note ?? spokenSelection(open.layout, open.report, selection))}
      </p>
      <div ref={legends} className="plan-legends">
        <OfferSign open={open} />
        {note !== null && <p aria-hidden="true">{note}</p>}
        {again && <p>{again}</p>}
        {explains && showZone && isMic && zone.rings.length > 0 && (
          <p>
            <span
              className={zoneIsOld ? 'plan-hatch plan-hatch-old' : 'plan-hatch'}
              aria-hidden="true"
            />
            {zoneText(zone.height, open.layout.units, zoneIsOld)}
          </p>
        )}
        {explains && showZone && selection?.kind === 'mic' && zone === null && (
          <p className="plan-late">{zoneLate}</p>
        )}
        {explains && showFloor && floor === null && <p className="plan-late">{floorLate}</p>}
        {explains && showRuns && lost > 0 && (
          <p>
            <span className="plan-no-way" aria-hidden="true" />
            {noWayText(lost)}
          </p>
        )}
        {explains && marks && <p>{marksText[marks.shows]}</p>}
        {explains && floor && <FloorLegend unit={open.layout.units} />}
      </div>
    </>
  );
});

/** Nobody can listen to every frame of a drag: the text is said when it has stood still for a moment. */
const STILL = 350;

function useSettled(text: string): string {
  const [settled, setSettled] = useState(text);
  // No passive effect: the ring's words change in every other frame of a drag, and React would send itself a message about each.
  useLayoutEffect(() => {
    const wait = setTimeout(() => setSettled(text), STILL);
    return () => clearTimeout(wait);
  }, [text]);
  return settled;
}
