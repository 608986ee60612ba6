import { useState } from 'react';
import { useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { runNews } from '../words/runNews.ts';

/** What the change under way, or else the last one, did to cables: said where the thing is moved, not only in its runs. */
export function RunNews() {
  const { layout, report } = useOpen();
  const before = useSession(({ gesture }) =>
    gesture === null || gesture.isOffer ? null : gesture.beforeReport,
  );
  // The last two reports at rest: when a gesture ends, what it began from is the earlier one.
  const [rest, setRest] = useState({ now: report, was: report });
  if (before === null && rest.now !== report) setRest({ now: report, was: rest.now });
  const news = runNews((before ?? rest.was).runs, report.runs, layout);
  return (
    <p role="status" className="run-news">
      {news}
    </p>
  );
}
