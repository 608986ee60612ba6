import { type OpenLayout, useSession } from '../../session/session.ts';

/**
 * Where things are now: in a gesture that is drawn in every frame and answered later, the preview of the finger; else what is given.
 *
 * @param given The open layout as it was answered.
 */
export function usePlaced(given: OpenLayout): OpenLayout {
  const placed = useSession(({ gesture, open }) => (gesture === null ? null : open));
  return placed ?? given;
}
