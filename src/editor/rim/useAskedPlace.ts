import { useCallback, useMemo, useState } from 'react';
import type { Vec2 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { withPlanned } from '../../report/plannedRing.ts';
import { clipIn, placeOnRing, type RingOfMic, type RingPlace } from '../../report/ring.ts';
import type { OpenLayout } from '../../session/session.ts';
import { FINGER } from '../pick/pick.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import type { ScreenPoint } from '../view/view.ts';
import { ringAngleAt } from './rimLine.ts';

interface Asked {
  readonly layout: Layout;
  readonly place: RingPlace;
}

export interface AskedPlace {
  /** What the clip would be at the place that was tapped; null when none was, or when the layout has changed since. */
  readonly place: RingPlace | null;
  /** Asks about the place of the ring under a finger on a plan; false when there is none. */
  ask(at: ScreenPoint, kitView: KitView): boolean;
  forget(): void;
}

/** The place of the shown rim ring that was asked about by a tap. */
export function useAskedPlace({ layout, report }: OpenLayout, ring: RingOfMic | null): AskedPlace {
  const [asked, setAsked] = useState<Asked | null>(null);
  const place =
    asked && ring && asked.layout === layout && asked.place.mic === ring.mic ? asked.place : null;
  const ask = useCallback(
    (at: ScreenPoint, kitView: KitView): boolean => {
      if (!ring) return false;
      const whole = withPlanned(layout, ring);
      const clip = clipIn(whole, ring.mic);
      const mic = report.rig.mics.find((one) => one.mic.id === ring.mic);
      if (mic && isAt(kitView, mic.tip, at)) return false;
      const angle = clip ? ringAngleAt(clip.drum, kitView, at) : null;
      const found = angle === null ? null : placeOnRing(whole, ring.mic, angle);
      if (!found) return false;
      setAsked({ layout, place: found });
      return true;
    },
    [layout, report, ring],
  );
  const forget = useCallback(() => setAsked(null), []);
  return useMemo(() => ({ place, ask, forget }), [place, ask, forget]);
}

/** Whether a finger is at the mic itself, where it means the mic and not the ring beside it. */
const isAt = (kitView: KitView, spot: Vec2, at: ScreenPoint): boolean => {
  const middle = kitToScreen(kitView, spot);
  return Math.hypot(middle.x - at.x, middle.y - at.y) <= FINGER;
};
