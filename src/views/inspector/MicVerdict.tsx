import type { Id } from '../../layout/fields.ts';
import { standingIn } from '../../report/standingIn.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { ClearSpot } from '../clearSpot/ClearSpot.tsx';
import { isClearance } from '../panel/worstFirst.ts';
import { IfTaken } from '../parts/IfTaken.tsx';
import { useOfferedOver } from '../parts/useOfferedOver.ts';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictBadge } from '../parts/VerdictMark.tsx';
import { clearancePlace, clearanceWords } from '../words/clearanceWords.ts';
import { findingWords } from '../words/findingWords.ts';
import { capitalised, nameOf } from '../words/nameOf.ts';
import { saidVerdict } from '../words/verdictWords.ts';

/** How much room a mic has: verdict, number, move, place, and what to do. In short it stays in view when that is scrolled away. */
export function MicVerdict({ mic }: { readonly mic: Id }) {
  const { layout, report } = useOpen();
  const isOffered = useOfferedOver() !== null;
  const row = report.clearances.find((each) => each.mic === mic);
  if (!row) return null;
  const finding = report.findings.find((each) => isClearance(each) && each.about[0] === mic);
  const place = clearancePlace(row, layout);
  const room = showClearance(row.clearance, layout);
  const within = standingIn(report).get(mic);
  const badge = saidVerdict(row, report);
  return (
    <>
      <section className={`verdict-card ${badge.verdict}-card`} aria-label="Clearance">
        <IfTaken />
        <p className="verdict-line">
          <VerdictBadge {...badge} />
          <span className="verdict-number">{room}</span>
        </p>
        {within && <p>{findingWords(within, layout).title}.</p>}
        <p>{capitalised(clearanceWords(row, layout))}.</p>
        {place !== undefined && <p className="small soft">Where it is nearest: {place}.</p>}
        {finding && <p className="next">{findingWords(finding, layout, report.clearances).next}</p>}
        <ClearSpot mic={mic} />
      </section>
      <div className="verdict-kept" aria-hidden="true">
        <p>
          <strong>{nameOf(layout, mic)}</strong>
          {isOffered && <span>If taken:</span>}
          <VerdictBadge {...badge} />
          <strong>{room}</strong>
        </p>
      </div>
    </>
  );
}
