import { useEffect, useMemo } from 'react';
import type { PlanMarks } from '../../session/patchView.ts';
import { showMarks } from '../../session/session.ts';

/** Keeps marks on the plan while the component is shown; they are only said again when they change. */
export function usePlanMarks(marks: PlanMarks): void {
  const text = JSON.stringify(marks);
  const kept = useMemo((): PlanMarks => JSON.parse(text), [text]);
  useEffect(() => {
    showMarks(kept);
    return () => showMarks(null);
  }, [kept]);
}
