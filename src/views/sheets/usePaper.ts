import { useState } from 'react';
import type { Orientation, Paper, PaperSize } from '../../sheet/paper/paper.ts';

/** Where Letter is the usual paper. From memory. */
const LETTER_LANDS = /-(US|CA|MX|PH|CL|CO|VE)$/;

let last: Paper | undefined;

/** The paper that sheets are made for: the last one chosen while the page is open, else what is usual where the browser is set to. */
export function usePaper() {
  const [paper, setPaper] = useState<Paper>(() => last ?? usual());
  const choose = (part: Partial<Paper>): void => {
    last = { ...paper, ...part };
    setPaper(last);
  };
  return {
    paper,
    setSize: (size: PaperSize) => choose({ size }),
    setOrientation: (orientation: Orientation) => choose({ orientation }),
  };
}

const usual = (): Paper => ({
  size: LETTER_LANDS.test(navigator.language) ? 'letter' : 'a4',
  orientation: 'landscape',
});

/** What a size of paper is called. */
export const PAPER_NAMES: Readonly<Record<PaperSize, string>> = { a4: 'A4', letter: 'Letter' };
