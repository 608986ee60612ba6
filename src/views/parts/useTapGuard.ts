import { type MouseEvent, useCallback, useEffect, useState } from 'react';
import { createTapGuard } from './tapGuard.ts';

/** A guard for the buttons that lead from one step to the next: says whether a click on them counts. `step` is what is shown. */
export function useTapGuard(step: string | undefined): (event: MouseEvent) => boolean {
  const [guard] = useState(createTapGuard);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the step that counts
  useEffect(() => guard.shown(performance.now()), [guard, step]);
  return useCallback((event) => guard.tap(event.timeStamp), [guard]);
}
