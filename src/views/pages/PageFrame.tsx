import { Suspense, useEffect, useRef } from 'react';
import type { PageName } from '../../session/pages.ts';
import { showPage } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { SavedSign } from '../workspace/SavedSign.tsx';
import { pageOf } from './pages.ts';

/** A page over the open layout: the way back, what it is, the layout's name, and the page itself. */
export function PageFrame({ name }: { readonly name: PageName }) {
  const { title, Page } = pageOf(name);
  const { layout } = useOpen();
  const heading = useRef<HTMLHeadingElement>(null);
  // Whoever reads by ear hears which page has come.
  useEffect(() => heading.current?.focus(), []);
  return (
    <div className="page">
      <header className="top-bar">
        <button type="button" onClick={() => showPage(null)}>
          <Icon name="back" /> Plan
        </button>
        <div className="bar-title">
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
          <p className="page-layout">{layout.name}</p>
        </div>
        <SavedSign />
      </header>
      <main className="page-body">
        <Suspense fallback={<p role="status">Opening…</p>}>
          <Page />
        </Suspense>
      </main>
    </div>
  );
}
