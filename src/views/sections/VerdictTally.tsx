import { markOf } from '../../report/judgement.ts';
import { countByNeed } from '../panel/worstFirst.ts';
import { IfTaken } from '../parts/IfTaken.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { needWords } from '../words/needWords.ts';
import { judgementWord, tally } from '../words/verdictWords.ts';

/** How many mics are struck, can't stay, are tight and clear, and how many findings of all kinds are to solve and to look at. */
export function VerdictTally() {
  const { report } = useOpen();
  const need = needWords(countByNeed(report));
  return (
    <>
      <IfTaken />
      <dl className="tally" aria-label="Mics by verdict">
        {tally(report).map(({ judgement, count }) => {
          const verdict = markOf(judgement);
          return (
            <div key={judgement} className={count > 0 ? `tally-cell ${verdict}` : 'tally-cell'}>
              <dt>{judgementWord(judgement)}</dt>
              <dd>{count}</dd>
              <VerdictMark verdict={verdict} />
            </div>
          );
        })}
      </dl>
      {need !== '' && <p className="tally-more">Of all findings: {need}</p>}
    </>
  );
}
