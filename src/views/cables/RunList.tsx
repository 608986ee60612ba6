import { useState } from 'react';
import type { RunRow } from '../../report/report.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { RunLine } from './RunLine.tsx';

/** Every run with its length and the cable that serves it, in the order of the box inputs. */
export function RunList() {
  const { layout, report } = useOpen();
  const panel = usePanel();
  const [shown, setShown] = useState<string | null>(null);
  if (report.runs.length === 0) {
    return (
      <p className="empty">
        {layout.mics.length === 0 ? 'A run appears for every mic that is placed.' : 'No runs yet.'}
      </p>
    );
  }
  const toggle = (run: RunRow) => {
    const next = shown === run.mic ? null : run.mic;
    setShown(next);
    panel.point(null, next === null ? null : { kind: 'mic', id: next });
  };
  return (
    <ul className="lines">
      {report.runs
        .toSorted((a, b) => (a.input ?? 999) - (b.input ?? 999))
        .map((run) => (
          <RunLine key={run.mic} run={run} shown={shown === run.mic} onToggle={() => toggle(run)} />
        ))}
    </ul>
  );
}
