import { useState } from 'react';
import type { Sound, TimingRow } from '../../../report/sound.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { counted } from '../../words/nameOf.ts';
import { PrintButton } from '../print/PrintButton.tsx';
import { delayTable, timingTable } from '../print/soundTables.ts';
import { SoundPartFrame } from '../SoundPartFrame.tsx';
import { msWords } from '../words/amounts.ts';
import { alignmentWords, harmOf, laterWords, rowTitle, tryWords } from '../words/timingWords.ts';
import { AirFields } from './AirFields.tsx';
import { FilterFields } from './FilterFields.tsx';
import { ALL_PAIRS, filteredPairs, fittingFilter } from './pairFilter.ts';
import { TimingDetails } from './TimingDetails.tsx';

/** So many pairs are looked through at a glance. */
const FEW = 4;

/** When every source arrives where, which polarity to try first, and what lines mics up. */
export function TimingPart({ sound }: { readonly sound: Sound }) {
  const { rows } = sound.timing;
  const inverted = rows.filter(({ polarity }) => polarity.tryFirst === 'inverted').length;
  return (
    <SoundPartFrame
      part="timing"
      title="Timing and polarity"
      summary={`${counted(rows.length, 'pair')}, ${inverted} to try inverted first`}
    >
      {() => <TimingBody sound={sound} />}
    </SoundPartFrame>
  );
}

function TimingBody({ sound }: { readonly sound: Sound }) {
  const { layout } = useOpen();
  const { rows, alignments } = sound.timing;
  const [wanted, setWanted] = useState(ALL_PAIRS);
  const all = layout.mics.map(({ id }) => id);
  const filter = fittingFilter(rows, wanted, all);
  const shown = filteredPairs(rows, filter);
  return (
    <>
      <p className="soft small">
        Polarity by the drum’s fundamental, an estimate until you set it under Levels and pitches.
        Listen to decide.
      </p>
      {rows.length > FEW && <FilterFields rows={rows} filter={filter} onFilter={setWanted} />}
      <p aria-live="polite" className="soft small">
        {shown.length === rows.length ? 'All' : shown.length} of {counted(rows.length, 'pair')}, the
        most harmful first.
      </p>
      {shown.map((row) => (
        <PairRow key={`${row.kind}/${row.first}/${row.second}`} row={row} />
      ))}
      <div className="sound-block">
        <h4>Delays that line close mics up with the overheads</h4>
        {alignments.length === 0 && <p className="soft">Needs a close mic and an overhead.</p>}
        {alignments.map((row) => (
          <p key={row.mic}>{alignmentWords(row, layout, layout.units)}</p>
        ))}
      </div>
      {rows.length > 0 && (
        <div className="buttons">
          <PrintButton
            sound={sound}
            what="these pairs and delays"
            tables={() => [timingTable(layout, shown), delayTable(layout, sound)]}
          />
        </div>
      )}
      <AirFields sound={sound} />
    </>
  );
}

function PairRow({ row }: { readonly row: TimingRow }) {
  const { layout } = useOpen();
  return (
    <details className="sound-row">
      <summary>
        <span className="line-text">
          <span className="line-name">{rowTitle(row, layout)}</span>
          <span className="line-note">
            {tryWords(row)}, {harmOf(row)}. {laterWords(row, layout, layout.units)}
          </span>
        </span>
        <span className="line-number">{msWords(Math.abs(row.delay.ms))}</span>
      </summary>
      <div className="sound-card">
        <TimingDetails row={row} />
      </div>
    </details>
  );
}
