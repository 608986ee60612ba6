import { useMemo } from 'react';
import type { Selection } from '../../session/selection.ts';
import type { OpenLayout } from '../../session/session.ts';
import type { KitView } from '../view/kitView.ts';
import { type Handle, handlesOf } from './handles.ts';

/** The handles of what is selected on the plan. */
export const useHandles = (
  { layout, report }: OpenLayout,
  selection: Selection | null,
  kitView: KitView,
): readonly Handle[] =>
  useMemo(
    () => handlesOf(layout, report.rig, selection, kitView),
    [layout, report.rig, selection, kitView],
  );
