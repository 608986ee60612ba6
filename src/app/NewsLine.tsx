import { useEffect } from 'react';
import { forgetNews, useNews } from './newsLine.ts';

/** How long the line stays, ms: long enough to be read on the way back to the stage. */
const SHOWN = 8_000;

/** Says under which name a file was handed out, or where files are that came in, and goes away by itself. */
export function NewsLine() {
  const news = useNews();
  useEffect(() => {
    if (news === null) return;
    const timer = setTimeout(forgetNews, SHOWN);
    return () => clearTimeout(timer);
  }, [news]);
  return (
    <p role="status" className="news-line">
      {news?.text}
    </p>
  );
}
