import type { ReactNode } from 'react';
import { useSession } from '../../session/session.ts';
import type { SoundPart } from '../../session/soundPreferences.ts';
import { preferSound } from './useSound.ts';

interface SoundPartFrameProps {
  readonly part: SoundPart;
  readonly title: string;
  /** Its main figure, in view while it is closed too. */
  readonly summary: string;
  /** Made only while it is open. */
  readonly children: () => ReactNode;
}

/** One part of the section under its heading; opening it closes the one that was open. */
export function SoundPartFrame({ part, title, summary, children }: SoundPartFrameProps) {
  const isOpen = useSession((state) => state.preferences.sound.part === part);
  return (
    <section className="sound-part">
      <h3>
        <button
          type="button"
          aria-expanded={isOpen}
          onClick={() => preferSound({ part: isOpen ? null : part })}
        >
          <span className="sound-part-title">{title}</span>
          <span className="sound-part-summary">{summary}</span>
        </button>
      </h3>
      {isOpen && <div className="sound-part-body">{children()}</div>}
    </section>
  );
}
