import { useOpen } from '../parts/useOpen.ts';
import { kitChangeLines } from '../words/changeWords.ts';

/** Lines that are shown of a kit that was changed all over. */
const MOST_LINES = 30;

/** What is not as it was shown to the drummer, with how far and by how much; nothing while nothing was changed. */
export function StaleList() {
  const { layout, report } = useOpen();
  if (report.signOff.kind !== 'stale' && report.signOff.kind !== 'reworked') return null;
  const lines = kitChangeLines(report.signOff.changes, layout);
  return (
    <ul className="stale-list">
      {lines.slice(0, MOST_LINES).map((line) => (
        <li key={line}>{line}</li>
      ))}
      {lines.length > MOST_LINES && <li>And {lines.length - MOST_LINES} more.</li>}
    </ul>
  );
}
