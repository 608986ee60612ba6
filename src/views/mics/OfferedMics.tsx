import { useState } from 'react';
import type { MicGroup } from '../../layout/catalogue/offered/offeredMics.ts';
import { hearWithOverheads, unheardCymbals } from '../../layout/catalogue/offered/overheads.ts';
import { edit, session } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { verdictNews } from '../words/verdictChanges.ts';
import { unmiked } from './unmiked.ts';
import { withUsualMic } from './withUsualMic.ts';

/** What has no mic yet; one tap adds the usual one. */
export function OfferedMics() {
  const { layout } = useOpen();
  const panel = usePanel();
  const [news, setNews] = useState('');
  const groups = unmiked(layout);
  const add = (label: string, chosen: readonly MicGroup[]) => {
    edit(label, (from) => chosen.reduce((to, { hears }) => withUsualMic(to, hears), from));
    const added = session.getState().open?.layout.mics.slice(layout.mics.length) ?? [];
    const last = added.at(-1);
    if (last) panel.point(null, { kind: 'mic', id: last.id });
    setNews(added.length === 0 ? 'No place was found for it.' : addedWords());
  };
  return (
    <section className="group" aria-labelledby="offered-title">
      <h3 id="offered-title">Without a mic</h3>
      {groups.length === 0 ? (
        <p className="field-hint">
          {layout.pieces.some((piece) => 'hands' in piece || piece.kind === 'kick')
            ? 'None. Every drum and cymbal group has its mic.'
            : 'Add drums and cymbals first.'}
        </p>
      ) : (
        <>
          <p className="field-hint">
            One tap adds the usual mic, at the first usual place that stands clear.
          </p>
          <div className="buttons">
            {groups.map((group) => (
              <button
                key={group.hears.join(' ')}
                type="button"
                onClick={() => add(`Mic for ${group.name}`, [group])}
              >
                <Icon name="plus" /> {group.name}
              </button>
            ))}
            {groups.length > 1 && (
              <button
                type="button"
                className="primary"
                onClick={() => add('Mic up the rest', groups)}
              >
                All {groups.length}
              </button>
            )}
          </div>
        </>
      )}
      <HearWithOverheads onNews={setNews} />
      <p className="small section-news" role="status">
        {news}
      </p>
    </section>
  );
}

/** Cymbals that were put down after the overheads: one tap has the overheads hear them, without another mic. */
function HearWithOverheads({ onNews }: { readonly onNews: (news: string) => void }) {
  const { layout } = useOpen();
  const cymbals = unheardCymbals(layout);
  if (cymbals.length === 0) return null;
  const hear = (id: string, name: string) => {
    edit(`Hear ${name} with the overheads`, (from) => hearWithOverheads(from, id));
    onNews(`The overheads hear ${name}.`);
  };
  return (
    <>
      <p className="field-hint">No mic hears these yet. The overheads above them can.</p>
      <div className="buttons">
        {cymbals.map(({ id, name }) => (
          <button key={id} type="button" onClick={() => hear(id, name)}>
            <Icon name="plus" /> Hear {name} with the overheads
          </button>
        ))}
      </div>
    </>
  );
}

/** `Added. Snare mic: Clear, 84 mm clear.`, from the report of what is open now. */
function addedWords(): string {
  const open = session.getState().open;
  const mic = open?.layout.mics.at(-1);
  const row = open?.report.clearances.find((each) => each.mic === mic?.id);
  if (!open || !mic) return '';
  if (!row) return `Added ${mic.name}.`;
  return `Added. ${verdictNews(row, open.report, open.layout)}`;
}
