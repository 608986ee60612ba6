import type { LabelForms } from './drawing/planDrawing.ts';
import type { SheetTable } from './paper/table.ts';

/** The sheets of a layout, in their order. */
export const SHEETS = ['placement', 'elevations', 'mics', 'check', 'setUp'] as const;
export type SheetName = (typeof SHEETS)[number];

/** Everything that sheets say. Words are made by who asks for sheets; here they are only set on paper. */
export interface SheetWords {
  readonly layoutName: string;
  /** Venue, date, player. */
  readonly about: string;
  readonly titles: Readonly<Record<SheetName, string>>;
  /** `Page 1 of 2`. */
  page(number: number, of: number): string;
  /** `Scale 1:20`, with the size of paper it holds for. */
  scale(scale: number): string;
  readonly forms: LabelForms;
  readonly sides: {
    readonly audience: string;
    readonly rulers: string;
    /** The front elevation as the audience sees it, and as seen from behind the player. */
    readonly front: string;
    readonly behind: string;
    readonly side: string;
  };
  /** What the signs on a drawing mean: only those that it shows. */
  readonly legends: { readonly plan: string; readonly elevations: string };
  readonly measures: SheetTable;
  readonly mics: SheetTable;
  readonly clearances: SheetTable;
  readonly findings: SheetTable;
  readonly setUp: SheetTable;
  /** Headings and paragraphs of the check sheet. */
  readonly check: {
    readonly clearances: string;
    readonly tally: string;
    readonly findings: string;
    readonly noFindings: string;
    readonly signOff: string;
    readonly signOffLines: readonly string[];
    /** Labels of lines to write on, where nobody has signed on the screen. */
    readonly blanks: readonly string[];
  };
  readonly howToMeasure: string;
  /** Short, at the foot of every page. */
  readonly caution: string;
}
