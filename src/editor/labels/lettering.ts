import type { MarkSign } from '../../session/patchView.ts';
import type { Verdict } from '../palette.ts';
import type { LabelForm, LabelWish } from './placeLabels.ts';

/** How a label looks. */
export type LabelLook =
  | { readonly kind: 'verdict'; readonly verdict: Verdict; readonly strong: boolean }
  | { readonly kind: 'name'; readonly strong: boolean }
  | { readonly kind: 'input'; readonly strong: boolean }
  | { readonly kind: 'side' }
  /** A height on its contour. */
  | { readonly kind: 'contour' }
  /** Null: without a mark. */
  | { readonly kind: 'measure'; readonly verdict: Verdict | null }
  /** What came of a line, or what is to be undone. */
  | { readonly kind: 'mark'; readonly sign: MarkSign };

/** A label that wants a place, with its look. */
export interface Lettering {
  readonly wish: LabelWish;
  readonly look: LabelLook;
}

const FAMILY =
  'system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif';

/** No text on the plan is smaller than 14 px, at any zoom. */
export const FONTS = {
  plain: `400 14px ${FAMILY}`,
  strong: `600 14px ${FAMILY}`,
  side: `600 15px ${FAMILY}`,
} as const;

/** Width of a text in a font, px. */
export type Measure = (text: string, font: string) => number;

export const fontOf = (look: LabelLook): string => {
  if (look.kind === 'side') return FONTS.side;
  if (look.kind === 'contour') return FONTS.strong;
  return isQuiet(look) || (look.kind === 'name' && !look.strong) ? FONTS.plain : FONTS.strong;
};

/** Room round the text, and for the verdict's mark before it, px. */
export const MARK = 16;
export const PAD = 6;

/** A clear mic that is not selected says so quietly. */
export const isQuiet = (look: LabelLook): boolean =>
  look.kind === 'verdict' && look.verdict === 'clear' && !look.strong;

/** A text with the room its look takes. */
export function formOf(text: string, look: LabelLook, measure: Measure): LabelForm {
  const width = measure(text, fontOf(look));
  switch (look.kind) {
    case 'verdict':
    case 'measure':
      return {
        text,
        width:
          text === '' ? MARK + PAD : width + (look.verdict === null ? 2 * PAD : MARK + 2.75 * PAD),
        height: isQuiet(look) ? 22 : 26,
      };
    case 'mark':
      return { text, width: width + 2 * PAD, height: 26 };
    case 'input':
      return { text, width: Math.max(22, width + 10), height: 22 };
    case 'name':
    case 'contour':
      return { text, width, height: 18 };
    case 'side':
      return { text, width: width + 2 * PAD, height: 24 };
  }
}
