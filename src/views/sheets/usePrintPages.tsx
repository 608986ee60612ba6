import { type ReactNode, useEffect, useState } from 'react';
import { createPortal } from 'react-dom';
import type { Page } from '../../sheet/mark.ts';
import { toSvg } from '../../sheet/writers/toSvg.ts';
import { svgAddress } from './pngOf.ts';

/** Prints pages to scale, each on its own paper. `printed` has to be drawn where it is used. */
export function usePrintPages(): {
  readonly printed: ReactNode;
  readonly printPages: (pages: readonly Page[]) => void;
} {
  const [pages, setPages] = useState<readonly Page[] | null>(null);
  const printed = pages && <PrintedPages pages={pages} onDone={() => setPages(null)} />;
  return { printed, printPages: setPages };
}

interface PrintedPagesProps {
  readonly pages: readonly Page[];
  readonly onDone: () => void;
}

/** Pages that are seen only on paper. The browser's print dialog opens once every page is drawn. */
function PrintedPages({ pages, onDone }: PrintedPagesProps) {
  const [first] = pages;
  useEffect(() => {
    if (!first) return;
    const rule = new CSSStyleSheet();
    rule.replaceSync(`@page { size: ${first.width}mm ${first.height}mm; margin: 0 }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rule];
    addEventListener('afterprint', onDone, { once: true });
    let isGone = false;
    const pictures = document.querySelectorAll<HTMLImageElement>('.printed-page');
    Promise.all(Array.from(pictures, (picture) => picture.decode())).then(
      () => {
        if (!isGone) print();
      },
      () => onDone(),
    );
    return () => {
      isGone = true;
      removeEventListener('afterprint', onDone);
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== rule);
    };
  }, [first, onDone]);
  return createPortal(
    <article className="print-sheet to-scale">
      {pages.map((page, i) => (
        <img
          // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name and never change places.
          key={i}
          className="printed-page"
          src={svgAddress(toSvg(page))}
          alt={`Page ${i + 1}`}
          style={{ width: `${page.width}mm`, height: `${page.height}mm` }}
        />
      ))}
    </article>,
    document.body,
  );
}
