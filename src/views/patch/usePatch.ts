import { useMemo } from 'react';
import { changePatch } from '../../layout/edit/patch.ts';
import type { Id } from '../../layout/fields.ts';
import type { PatchSettings } from '../../layout/patch.ts';
import { festivalMics } from '../../patch/inputList.ts';
import { type PatchReport, patchReport } from '../../report/patch.ts';
import { edit } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';

/** The patch of the open layout, computed only where it is shown. */
export function usePatch(): PatchReport {
  const { layout, report } = useOpen();
  return useMemo(() => patchReport(layout, report), [layout, report]);
}

/** The mics of the open layout in festival order, which edits of channels need. */
export function useFestivalMics(): readonly Id[] {
  const { rig } = useOpen().report;
  return useMemo(() => festivalMics(rig), [rig]);
}

/** One undoable change of the patch. */
export const editPatch = (label: string, change: (patch: PatchSettings) => PatchSettings): void =>
  edit(label, (layout) => changePatch(layout, change));
