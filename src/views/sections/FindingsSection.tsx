import { useMemo } from 'react';
import { useClearing } from '../../session/clearing.ts';
import { useSession } from '../../session/session.ts';
import { ClearEverything } from '../clearSpot/ClearEverything.tsx';
import { inOrder, listed, shownLine, worstFirst } from '../panel/worstFirst.ts';
import { useOpen } from '../parts/useOpen.ts';
import { FindingLine } from './FindingLine.tsx';
import { NoMicsYet } from './NoMicsYet.tsx';
import { VerdictTally } from './VerdictTally.tsx';

/** Every mic with its clearance and every other finding, the worst first. */
export function FindingsSection() {
  const { layout, report } = useOpen();
  const shownKey = useSession((state) => state.shownFinding);
  const search = useClearing();
  const before = search?.kind === 'offered' ? search.before.report : null;
  const rows = useMemo(
    () => inOrder(worstFirst(report), before, shownKey),
    [report, before, shownKey],
  );
  const { shown, more } = listed(rows, shownKey);
  const open = shownLine(shown, shownKey);
  if (layout.mics.length === 0 && rows.length === 0) return <NoMicsYet />;
  return (
    <>
      <h2 className="spoken">Findings, the worst first</h2>
      <VerdictTally />
      <ClearEverything />
      {rows.length === 0 ? (
        <p className="empty">No results for this layout yet.</p>
      ) : (
        <ul className="lines">
          {shown.map((row) => (
            <FindingLine
              key={row.kind === 'mic' ? row.row.mic : row.key}
              row={row}
              shown={row === open}
            />
          ))}
        </ul>
      )}
      {more > 0 && (
        <p className="field-hint">
          And {more} more {more === 1 ? 'finding' : 'findings'}. They show as the worst are put
          right; the report has them all.
        </p>
      )}
    </>
  );
}
