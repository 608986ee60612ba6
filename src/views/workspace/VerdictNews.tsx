import { useEffect, useRef, useState } from 'react';
import { useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { verdictChanges } from '../words/verdictChanges.ts';

/** Reads aloud which mics changed their verdict, once a gesture has ended. */
export function VerdictNews() {
  const { layout, report } = useOpen();
  const quiet = useSession((state) => state.gesture === null);
  const before = useRef({ id: layout.id, report });
  const [news, setNews] = useState('');
  useEffect(() => {
    if (!quiet) return;
    if (before.current.id === layout.id) {
      const changed = verdictChanges(before.current.report, report, layout);
      if (changed !== '') setNews(changed);
    }
    before.current = { id: layout.id, report };
  }, [quiet, layout, report]);
  return (
    <p className="spoken" role="status" data-testid="verdict-news">
      {news}
    </p>
  );
}
