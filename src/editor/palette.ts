import type { ClearanceRow } from '../report/report.ts';

export type Verdict = ClearanceRow['verdict'];

/**
 * Every colour on the canvas. Lines and marks keep 3:1 against the ground they stand on and text 4.5:1 (WCAG 2.2, 1.4.11 and
 * 1.4.3; the test at the mirrored path computes it); what only shades (grid, fills, fading silhouettes) does not carry meaning
 * by itself.
 */
export interface Palette {
  /** The stage floor round the deck, and the deck itself. */
  readonly floor: string;
  readonly deck: string;
  readonly deckEdge: string;
  readonly grid: string;
  readonly gridStrong: string;
  readonly centreLine: string;
  /** Lines and text of the drawing itself. */
  readonly ink: string;
  readonly inkSoft: string;
  /** Behind text that lies on the drawing. */
  readonly halo: string;
  readonly shell: string;
  readonly head: string;
  readonly hoop: string;
  readonly brass: string;
  readonly brassFill: string;
  readonly hardware: string;
  readonly hardwareFill: string;
  readonly body: string;
  readonly bodyInside: string;
  readonly mic: string;
  readonly micFill: string;
  readonly micStand: string;
  readonly cable: string;
  readonly box: string;
  readonly selected: string;
  readonly handleFill: string;
  readonly focus: string;
  readonly plate: string;
  readonly verdict: Readonly<Record<Verdict, string>>;
  readonly zone: string;
  /** Height contours of the stick floor. */
  readonly contour: string;
  readonly stick: string;
  readonly arm: string;
}

const dark: Palette = {
  floor: '#0e1013',
  deck: '#191d22',
  deckEdge: '#8d97a3',
  grid: '#21262d',
  gridStrong: '#2b323a',
  centreLine: '#5f6a77',
  ink: '#eef1f4',
  inkSoft: '#aeb7c1',
  halo: '#14171b',
  shell: '#39424c',
  head: '#262d35',
  hoop: '#cfd6dd',
  brass: '#d8b56a',
  brassFill: 'rgba(216, 181, 106, 0.16)',
  hardware: '#74808d',
  hardwareFill: '#2c333b',
  body: '#7b8591',
  bodyInside: '#1e2329',
  mic: '#f6f8fa',
  micFill: '#4a5560',
  micStand: '#9da8b4',
  cable: '#a99bf0',
  box: '#c9c0ff',
  selected: '#54c1ff',
  handleFill: '#0f2a3a',
  focus: '#ffffff',
  plate: '#1f242a',
  verdict: { clear: '#4fd19a', tight: '#ffc24d', struck: '#ff8a7c' },
  zone: '#ff8a7c',
  contour: '#ec9bd2',
  stick: '#f0c48c',
  arm: '#d9a877',
};

const light: Palette = {
  floor: '#e3e0d9',
  deck: '#fbfaf7',
  deckEdge: '#5d6570',
  grid: '#efece5',
  gridStrong: '#e2ded5',
  centreLine: '#858a90',
  ink: '#1c2127',
  inkSoft: '#4d555e',
  halo: '#fbfaf7',
  shell: '#d5d3cd',
  head: '#f5f6f7',
  hoop: '#3c444d',
  brass: '#8a6410',
  brassFill: 'rgba(193, 146, 41, 0.18)',
  hardware: '#858c94',
  hardwareFill: '#e6e4df',
  body: '#858b93',
  bodyInside: '#f3f1ec',
  mic: '#14181c',
  micFill: '#c2c8cf',
  micStand: '#59626d',
  cable: '#5b49b8',
  box: '#4a3aa0',
  selected: '#005c9e',
  handleFill: '#e2f1fb',
  focus: '#000000',
  plate: '#ffffff',
  verdict: { clear: '#07603d', tight: '#774400', struck: '#a31912' },
  zone: '#a31912',
  contour: '#93246f',
  stick: '#96611c',
  arm: '#b98450',
};

export const palettes = { dark, light } as const;
export type Theme = keyof typeof palettes;

/** The colour of what has a verdict, or of what is told without one. */
export const verdictInk = (
  verdict: Verdict | null,
  { verdict: colours, inkSoft }: Palette,
): string => (verdict === null ? inkSoft : colours[verdict]);
