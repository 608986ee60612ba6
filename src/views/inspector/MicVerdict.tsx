import type { Id } from '../../layout/fields.ts';
import { isClearance, whyNot } from '../../report/judgement.ts';
import { ClearSpot } from '../clearSpot/ClearSpot.tsx';
import { ClearanceNext } from '../findings/ClearanceNext.tsx';
import { FindingBody } from '../findings/FindingBody.tsx';
import { IfTaken } from '../parts/IfTaken.tsx';
import { useOfferedOver } from '../parts/useOfferedOver.ts';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictBadge } from '../parts/VerdictMark.tsx';
import { clearancePlace, clearanceWords, movingWords } from '../words/clearanceWords.ts';
import { capitalised, nameOf } from '../words/nameOf.ts';
import { unreachedWords } from '../words/reachWords.ts';
import { figureWords, troublesOf } from '../words/troubleWords.ts';
import { saidVerdict } from '../words/verdictWords.ts';

/**
 * How much room a mic has: verdict, number, move, place, and what to do; of one that can't stay, why that is, and the rest after it. In short
 * it stays in view when that is scrolled away.
 */
export function MicVerdict({ mic }: { readonly mic: Id }) {
  const { layout, report } = useOpen();
  const isOffered = useOfferedOver() !== null;
  const row = report.clearances.find((each) => each.mic === mic);
  if (!row) return null;
  const finding = report.findings.find((each) => isClearance(each) && each.about[0] === mic);
  const isRoom = troublesOf(row, report).length === 0;
  const why = whyNot(mic, report);
  const place = clearancePlace(row, layout);
  const figure = figureWords(row, report, layout);
  const badge = saidVerdict(row, report);
  const unreached = unreachedWords(row, report, layout);
  return (
    <>
      <section className={`verdict-card ${badge.verdict}-card`} aria-label="Clearance">
        <IfTaken />
        <p className="verdict-line">
          <VerdictBadge {...badge} />
          <span className={isRoom ? 'verdict-number' : 'verdict-why'}>{figure}</span>
        </p>
        {isRoom && (
          <>
            <p>{capitalised(clearanceWords(row, layout))}.</p>
            {place !== undefined && <p className="small soft">Where it is nearest: {place}.</p>}
            {finding && <ClearanceNext row={row} finding={finding} />}
          </>
        )}
        {why.map((each) => (
          <div key={each.key} className="verdict-cause">
            <FindingBody finding={each} />
          </div>
        ))}
        <ClearSpot mic={mic} />
        {!isRoom && <p className="small soft">{movingWords(row, why, layout)}</p>}
        {unreached !== '' && <p className="small soft">{unreached}</p>}
      </section>
      <div className="verdict-kept" aria-hidden="true">
        <p>
          <strong>{nameOf(layout, mic)}</strong>
          {isOffered && <span>If taken:</span>}
          <VerdictBadge {...badge} />
          {isRoom && <strong>{figure}</strong>}
        </p>
      </div>
    </>
  );
}
