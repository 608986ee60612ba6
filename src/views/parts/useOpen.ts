import type { OpenLayout } from '../../session/session.ts';
import { useSession } from '../../session/session.ts';

/** The open layout with its report. Only inside the workspace, which is shown while one is open. */
export function useOpen(): OpenLayout {
  const open = useSession((state) => state.open);
  if (open === null) throw new Error('this part of the screen needs an open layout');
  return open;
}
