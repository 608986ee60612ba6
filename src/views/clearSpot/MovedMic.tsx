import { useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { OpenLayout } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { roomWords, spareWords } from '../words/clearSpotWords.ts';
import { moveRows } from '../words/moveRows.ts';
import { moveToDo } from '../words/moveToDo.ts';
import { capitalised, nameOf, unbroken } from '../words/nameOf.ts';
import { SoundOfSpot } from './SoundOfSpot.tsx';

interface MovedMicProps {
  readonly mic: Id;
  /** The layout without the offer. */
  readonly before: OpenLayout;
}

/** One of the mics that would move: how it stands and would stand, and what a hand does; its numbers and its sound are folded away. */
export function MovedMic({ mic, before }: MovedMicProps) {
  const { layout, report } = useOpen();
  const [isOpen, setOpen] = useState(false);
  const old = before.layout.mics.find(({ id }) => id === mic);
  const now = layout.mics.find(({ id }) => id === mic);
  const was = before.report.clearances.find((row) => row.mic === mic);
  const would = report.clearances.find((row) => row.mic === mic);
  if (!old || !now || !was || !would) return null;
  const name = nameOf(layout, mic);
  const spare = spareWords(would, layout, before.report);
  const changes = moveRows(old, now, layout.units).map(({ said }) => said);
  return (
    <li>
      <strong>{name}</strong>: <span className="unbroken">{roomWords(was, before)}</span> →{' '}
      <span className="unbroken">{roomWords(would, { layout, report })}</span>
      {spare !== '' && `, ${spare}`}. {unbroken(moveToDo(old, now, layout.units))}
      <details className="moved-more" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          Numbers and sound<span className="spoken"> of {name}</span>
        </summary>
        {isOpen && (
          <p className="soft">
            {unbroken(capitalised(changes.join('; ')))}. <SoundOfSpot mic={mic} before={before} />
          </p>
        )}
      </details>
    </li>
  );
}
