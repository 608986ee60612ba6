import { useSyncExternalStore } from 'react';
import {
  answeredOf,
  newestOf,
  type OpenLayout,
  type SessionState,
  session,
} from '../../session/session.ts';
import { createPace } from './pace.ts';

const drawnIn = ({ open }: SessionState): OpenLayout | null => open && answeredOf(open);

/** While a finger drags, the panel follows at half the pace of the drawing; any other change is seen at once. */
const paced = createPace<OpenLayout | null>(
  {
    read: () => {
      const { open } = session.getState();
      return open && newestOf(open);
    },
    mayWait: (open) => {
      const { gesture } = session.getState();
      return open !== null && gesture !== null && gesture.isOffer !== true;
    },
    // Between two drawings of newer answers, so that no frame holds both.
    subscribe: (hear) =>
      session.subscribe((now, before) => {
        if (drawnIn(now) !== drawnIn(before)) hear();
      }),
  },
  {
    request: (callback) => requestAnimationFrame(callback),
    cancel: (request) => cancelAnimationFrame(request),
  },
);

/**
 * The open layout with its report, as the panel shows it: in a drag the newest that was answered, at most two frames later. Only inside the
 * workspace, which is shown while one is open.
 */
export const useOpen = (): OpenLayout => useOpenPart((open) => open);

/**
 * What {@link useOpen} tells, for who needs little of it: rendered again only when that is another.
 *
 * @param part Gives the same for the same layout and report.
 */
export function useOpenPart<Part>(part: (open: OpenLayout) => Part): Part {
  return useSyncExternalStore(paced.subscribe, () => {
    const open = paced.snapshot();
    if (open === null) throw new Error('this part of the screen needs an open layout');
    return part(open);
  });
}
