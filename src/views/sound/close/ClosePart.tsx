import type { CloseRow, Sound } from '../../../report/sound.ts';
import { select, useSession } from '../../../session/session.ts';
import { usePanel } from '../../panel/usePanel.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { nameOf } from '../../words/nameOf.ts';
import { SoundPartFrame } from '../SoundPartFrame.tsx';
import { useSoundChanges } from '../useSound.ts';
import { closeLine, closeSummary, isolationFigure } from '../words/closeWords.ts';
import { CloseMicCard } from './CloseMicCard.tsx';

/** Every close mic with its isolation; the selected one opens. */
export function ClosePart({ sound }: { readonly sound: Sound }) {
  const { layout } = useOpen();
  return (
    <SoundPartFrame part="close" title="Close mics" summary={closeSummary(sound.close, layout)}>
      {() => <CloseList sound={sound} />}
    </SoundPartFrame>
  );
}

function CloseList({ sound }: { readonly sound: Sound }) {
  const changes = useSoundChanges(sound);
  return (
    <ul className="lines">
      {sound.close.map((row) => (
        <CloseLine
          key={row.mic}
          row={row}
          sound={sound}
          change={changes.find(({ mic }) => mic === row.mic)}
        />
      ))}
    </ul>
  );
}

interface CloseLineProps {
  readonly row: CloseRow;
  readonly sound: Sound;
  readonly change: ReturnType<typeof useSoundChanges>[number] | undefined;
}

function CloseLine({ row, sound, change }: CloseLineProps) {
  const { layout } = useOpen();
  const panel = usePanel();
  const selection = useSession((state) => state.selection);
  const isOpen = selection?.kind === 'mic' && selection.id === row.mic;
  const toggle = () => {
    if (isOpen) select(null);
    else panel.point(null, { kind: 'mic', id: row.mic });
  };
  return (
    <li className={isOpen ? 'line shown' : 'line'}>
      <button type="button" className="line-button" aria-expanded={isOpen} onClick={toggle}>
        <span className="line-text">
          <span className="line-name">{nameOf(layout, row.mic)}</span>
          <span className="line-note">{closeLine(row, layout)}</span>
        </span>
        <span className="line-number">
          <span className="spoken">Isolation </span>
          {isolationFigure(row)}
        </span>
      </button>
      {isOpen && <CloseMicCard row={row} sound={sound} change={change} />}
    </li>
  );
}
