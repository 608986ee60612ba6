import { ownLayout, session } from '../session/session.ts';
import { layoutFile } from '../storage/files.ts';
import { handOut } from './handOut.ts';
import { sayTrouble } from './trouble.ts';

/** Hands out what is open as a file, with nothing but the session: for when anything else may have failed. */
export function exportOpen(): void {
  const layout = ownLayout(session.getState());
  if (!layout) return;
  handOut(layoutFile(layout)).catch((error: unknown) => sayTrouble('Export failed', error));
}
