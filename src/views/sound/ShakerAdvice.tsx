import type { Id } from '../../layout/fields.ts';
import { edit } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { nameOf } from '../words/nameOf.ts';
import { shakerFeed, withShakerFeed } from './shaker.ts';
import { fedWords, shakerWords } from './words/kickWords.ts';

/** How a seat shaker is fed: one tap splits a kick mic's signal in the patch. */
export function ShakerAdvice({ mics }: { readonly mics: readonly Id[] }) {
  const { layout } = useOpen();
  const panel = usePanel();
  const feed = shakerFeed(layout, mics);
  return (
    <div className="sound-block">
      <h4>Seat shaker</h4>
      {feed ? (
        <>
          <p>{fedWords(feed, layout)}</p>
          <button type="button" onClick={() => panel.goTo('patch')}>
            Open the patch
          </button>
        </>
      ) : (
        <>
          <p className="soft">{shakerWords(layout)}</p>
          <div className="buttons">
            {mics.map((mic) => (
              <button
                key={mic}
                type="button"
                onClick={() =>
                  edit(`Split ${nameOf(layout, mic)} for a seat shaker`, (now) =>
                    withShakerFeed(now, mic),
                  )
                }
              >
                Split {nameOf(layout, mic)} for a seat shaker
              </button>
            ))}
          </div>
        </>
      )}
    </div>
  );
}
