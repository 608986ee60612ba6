import { useEffect, useMemo } from 'react';
import type { Finding } from '../report/report.ts';
import { toDeck } from '../rig/deckFrame.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import type { ViewControls } from './view/useView.ts';

/** The finding that is shown on the plan, brought into view when it is chosen; undefined when none is. */
export function useFinding({ layout, report }: OpenLayout, controls: ViewControls) {
  const key = useSession((state) => state.shownFinding);
  const finding = useMemo(
    (): Finding | undefined => report.findings.find((one) => one.key === key),
    [report.findings, key],
  );
  const { reveal } = controls;
  // Only choosing a finding moves the view: while its cause is dragged the plan stays still.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    if (key !== null && finding?.place) reveal(toDeck(layout.deck, finding.place));
  }, [key]);
  return finding;
}
