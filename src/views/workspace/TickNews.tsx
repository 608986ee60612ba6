import { useState } from 'react';
import { keptLayout, useSession } from '../../session/session.ts';
import { tickNews } from '../words/tickWords.ts';

/** That the last step took ticks off the set-up list: what was moved is to be set down again. Until the next step. */
export function TickNews() {
  const layout = useSession(keptLayout);
  const [seen, setSeen] = useState({ layout, news: '' });
  if (layout !== seen.layout) {
    const isSame = layout !== null && layout.id === seen.layout?.id;
    setSeen({ layout, news: isSame && seen.layout ? tickNews(seen.layout, layout) : '' });
  }
  return (
    <span role="status" className="tick-news">
      {seen.news !== '' && (
        <>
          {seen.news}
          <span className="spoken">: what was moved is to be set down again</span>
        </>
      )}
    </span>
  );
}
