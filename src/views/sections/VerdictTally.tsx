import { standingIn, verdictCounts } from '../../report/standingIn.ts';
import { countByNeed } from '../panel/worstFirst.ts';
import { IfTaken } from '../parts/IfTaken.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { needWords } from '../words/needWords.ts';
import { type Verdict, verdictWord, withinWords } from '../words/verdictWords.ts';

const order: readonly Verdict[] = ['struck', 'tight', 'clear'];

/** How many mics are struck, tight and clear, and how many findings of all kinds are to solve and to look at. */
export function VerdictTally() {
  const { report } = useOpen();
  const counts = verdictCounts(report);
  const need = needWords(countByNeed(report));
  const within = standingIn(report).size;
  return (
    <>
      <IfTaken />
      <dl className="tally" aria-label="Mics by verdict">
        {order.map((verdict) => (
          <div
            key={verdict}
            className={counts[verdict] > 0 ? `tally-cell ${verdict}` : 'tally-cell'}
          >
            <dt>{verdictWord(verdict)}</dt>
            <dd>{counts[verdict]}</dd>
            <VerdictMark verdict={verdict} />
          </div>
        ))}
      </dl>
      {need !== '' && <p className="tally-more">Of all findings: {need}</p>}
      {within > 0 && <p className="field-problem tally-more">{withinWords(within)}.</p>}
    </>
  );
}
