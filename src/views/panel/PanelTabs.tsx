import { type KeyboardEvent, useMemo } from 'react';
import { useOfferedOver } from '../parts/useOfferedOver.ts';
import { useOpen } from '../parts/useOpen.ts';
import { needWords } from '../words/needWords.ts';
import { type SectionId, usePanel } from './usePanel.ts';
import { countByNeed } from './worstFirst.ts';

const tabs: readonly { readonly id: SectionId; readonly text: string }[] = [
  { id: 'findings', text: 'Findings' },
  { id: 'kit', text: 'Kit' },
  { id: 'mics', text: 'Mics' },
  { id: 'cables', text: 'Cables' },
  { id: 'patch', text: 'Patch' },
  { id: 'sound', text: 'Sound' },
  { id: 'stage', text: 'Stage' },
  { id: 'player', text: 'Player' },
];

const moves: Readonly<Record<string, (index: number) => number>> = {
  ArrowRight: (index) => (index + 1) % tabs.length,
  ArrowLeft: (index) => (index + tabs.length - 1) % tabs.length,
  Home: () => 0,
  End: () => tabs.length - 1,
};

/** The sections of the panel. */
export function PanelTabs() {
  const panel = usePanel();
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const from = tabs.findIndex((tab) => tab.id === panel.section);
    const to = tabs[moves[event.key]?.(from) ?? -1];
    if (!to) return;
    event.preventDefault();
    panel.goTo(to.id);
    document.getElementById(`tab-${to.id}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label="Sections" onKeyDown={onKeyDown}>
      {tabs.map(({ id, text }) => (
        <button
          key={id}
          type="button"
          role="tab"
          id={`tab-${id}`}
          className="tab"
          aria-selected={panel.section === id}
          aria-controls="panel-view"
          tabIndex={panel.section === id ? 0 : -1}
          onClick={() => panel.goTo(id)}
        >
          {text} {id === 'findings' && <FindingsCount />}
        </button>
      ))}
    </div>
  );
}

/** How many findings must be solved; rendered by itself, because the tabs stay the same in a drag. */
function FindingsCount() {
  const { report } = useOpen();
  const offered = useOfferedOver();
  // What is only offered has solved nothing yet.
  const own = offered ?? report;
  const need = useMemo(() => countByNeed(own), [own]);
  return (
    need.solve > 0 && (
      <span className="tab-count">
        <span aria-hidden="true">{need.solve}</span>
        <span className="spoken">{needWords(need)}</span>
      </span>
    )
  );
}
