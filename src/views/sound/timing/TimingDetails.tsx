import type { TimingRow } from '../../../report/sound.ts';
import { showLength } from '../../../units/lengthText.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { Facts } from '../Facts.tsx';
import { figure, hertzWords, msWords, samplesWords, signedFigure } from '../words/amounts.ts';
import { laterWords, nullsWords, polarityWords, rippleWords } from '../words/timingWords.ts';

/** Everything about one source in two mics. */
export function TimingDetails({ row }: { readonly row: TimingRow }) {
  const { layout } = useOpen();
  const { delay, phase, fundamental } = row;
  return (
    <>
      <p>
        <strong>{polarityWords(row)}</strong>
      </p>
      <p>{laterWords(row, layout, layout.units)}</p>
      <Facts
        facts={[
          ['Path difference', showLength(Math.abs(row.pathDifference), layout.units)],
          ['Delay', msWords(Math.abs(delay.ms))],
          ['Samples, 48 kHz', samplesWords(Math.abs(delay.samples48))],
          ['Samples, 96 kHz', samplesWords(Math.abs(delay.samples96))],
          [
            fundamental === null ? 'Phase' : `Phase at ${hertzWords(fundamental)}`,
            phase === null ? 'no fundamental' : `${signedFigure(phase, 0)}°`,
          ],
          ['Level difference', `${figure(Math.abs(row.levelDifference), 1)} dB`],
        ]}
      />
      <p className="small">First nulls as plugged: {nullsWords(row.nulls)}.</p>
      <p className="small">With one inverted: {nullsWords(row.nullsInverted)}.</p>
      <p className="small">Ripple at equal gain: {rippleWords(row.ripple)}.</p>
    </>
  );
}
