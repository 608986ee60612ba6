import { createPortal } from 'react-dom';
import { LEFT_OUT_OF_SOUND, type Sound } from '../../../report/sound.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { CAUTIONS } from '../../words/cautionWords.ts';
import { FigureTable } from '../NumbersTable.tsx';
import { estimateWords, styleWords } from '../words/estimateWords.ts';
import { airWords } from '../words/timingWords.ts';
import type { SoundTable } from './soundTables.ts';

interface SoundSheetProps {
  readonly tables: readonly SoundTable[];
  readonly sound: Sound;
}

/** Tables of figures on as many pages as they take, heads repeated; seen only on paper. */
export function SoundSheet({ tables, sound }: SoundSheetProps) {
  const { name, venue, patch } = useOpen().layout;
  const hearing = CAUTIONS.find(({ what }) => what === 'Hearing');
  const where = [venue.name, venue.date ?? ''].filter((text) => text !== '');
  return createPortal(
    <article className="print-sheet sound-sheet">
      <h1>Sound: {name}</h1>
      <p>{[...where, `style: ${styleWords(patch.style).toLowerCase()}`].join(', ')}</p>
      <p>
        {hearing?.text} {estimateWords(LEFT_OUT_OF_SOUND)} {airWords(sound)}
      </p>
      {tables.map(({ title, head, rows }) => (
        <section key={title}>
          <h2>{title}</h2>
          <FigureTable caption={title} head={head} rows={rows} />
        </section>
      ))}
    </article>,
    document.body,
  );
}
