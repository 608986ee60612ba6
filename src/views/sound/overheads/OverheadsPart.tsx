import type { OverheadSound, Sound } from '../../../report/sound.ts';
import { LENGTH } from '../../fields/measure.ts';
import { NumberField } from '../../fields/NumberField.tsx';
import { useOpen } from '../../parts/useOpen.ts';
import { nameOf } from '../../words/nameOf.ts';
import { FigureTable } from '../NumbersTable.tsx';
import { SoundPartFrame } from '../SoundPartFrame.tsx';
import { WashField } from '../WashField.tsx';
import { differenceWords, levelWords } from '../words/amounts.ts';
import { balanceWords, heightsWords, spreadWords } from '../words/overheadWords.ts';
import { HeightChart } from './HeightChart.tsx';
import { HEIGHTS, raiseOverheads } from './moveOverheads.ts';
import { Starts } from './Starts.tsx';

/** What the overheads hear, and at what height they should hang. */
export function OverheadsPart({ sound }: { readonly sound: Sound }) {
  const { layout } = useOpen();
  const { overheads } = sound;
  return (
    <SoundPartFrame
      part="overheads"
      title="Overheads"
      summary={overheads ? spreadWords(overheads, layout) : 'No overhead yet.'}
    >
      {() =>
        overheads ? (
          <WithOverheads overheads={overheads} />
        ) : (
          <p className="soft">
            An overhead stands above all that it hears, a cymbal among it. Add two in Mics.
          </p>
        )
      }
    </SoundPartFrame>
  );
}

function WithOverheads({ overheads }: { readonly overheads: OverheadSound }) {
  const { layout } = useOpen();
  const { mics, top } = overheads;
  const ids = mics.map(({ mic }) => mic);
  const heights = mics.flatMap(({ height }) => height ?? []);
  return (
    <>
      <CymbalTable overheads={overheads} />
      <p>{balanceWords(overheads, layout)}</p>
      {top !== null && (
        <>
          <p>Now {heightsWords(heights, layout.units)}.</p>
          <HeightChart overheads={overheads} top={top} />
          <NumberField
            label="All overheads over the highest cymbal"
            step="Overhead height"
            value={Math.min(...heights)}
            measure={LENGTH}
            limits={HEIGHTS}
            apply={(now, height) => raiseOverheads(now, ids, top + height)}
          />
          <Starts overheads={overheads} height={Math.max(HEIGHTS.low, Math.min(...heights))} />
        </>
      )}
      <WashField />
    </>
  );
}

function CymbalTable({ overheads }: { readonly overheads: OverheadSound }) {
  const { layout } = useOpen();
  const { mics, together } = overheads;
  const cymbals = together.cymbals.map(({ piece }, i): [string, ...string[]] => [
    nameOf(layout, piece) + (piece === together.loudest ? ' (loudest)' : ''),
    ...mics.map((mic) => levelWords(mic.cymbals[i]?.level ?? Number.NaN)),
  ]);
  return (
    <div className="sound-table">
      <FigureTable
        caption="What each overhead hears"
        head={['Heard', ...mics.map(({ mic }) => nameOf(layout, mic))]}
        rows={[
          ...cymbals,
          ['Snare', ...mics.map(({ snare }) => levelWords(snare ?? Number.NaN))],
          [
            'Loudest cymbal',
            ...mics.map(({ loudest }) => (loudest === null ? '–' : nameOf(layout, loudest))),
          ],
          ['Spread of cymbals', ...mics.map(({ spread }) => differenceWords(spread))],
          ['Over stage wash', ...mics.map(({ overWash }) => differenceWords(overWash))],
        ]}
      />
    </div>
  );
}
