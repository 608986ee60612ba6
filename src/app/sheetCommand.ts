import type { Layout } from '../layout/layout.ts';
import { createAnalyst } from '../report/analyse.ts';
import { planDrawing } from '../sheet/drawing/planDrawing.ts';
import { makeSheet, makeSheets } from '../sheet/makeSheets.ts';
import type { Orientation, PaperSize } from '../sheet/paper/paper.ts';
import { toDxf } from '../sheet/writers/toDxf.ts';
import { toPdf } from '../sheet/writers/toPdf.ts';
import { toSvg } from '../sheet/writers/toSvg.ts';
import { sheetWords } from '../views/words/sheetWords.ts';
import { type CommandSurroundings, readGiven } from './readGiven.ts';

/** What the command touches outside itself. */
export interface SheetSurroundings extends Pick<CommandSurroundings, 'read' | 'complain'> {
  /** Writes a file. Throws with a message that says why it can't be written. */
  write(file: string, content: string | Uint8Array): void;
}

const FORMATS = ['pdf', 'svg', 'dxf'] as const;
type Format = (typeof FORMATS)[number];
const PAPERS: readonly PaperSize[] = ['a4', 'letter'];
const ORIENTATIONS: readonly Orientation[] = ['landscape', 'portrait'];
const PAPER_NAMES = { a4: 'A4', letter: 'Letter' } as const;

const USAGE =
  'Usage: npm run report -- FILE --sheet pdf|svg|dxf OUT [--paper a4|letter] [--orientation landscape|portrait] [--from house|player]';

/** Whether sheets are asked for. */
export const asksForSheet = (given: readonly string[]): boolean => given.includes('--sheet');

interface Asked {
  readonly file: string;
  readonly format: Format;
  readonly out: string;
  readonly size: PaperSize;
  readonly orientation: Orientation;
  readonly seenFrom: 'house' | 'player';
}

/**
 * Writes the sheets of a layout file: all of them as PDF, the plan as SVG, or the plan as DXF (mm, deck frame) without a browser.
 *
 * @returns The exit code: 0 when the file is written, 2 when it is not.
 */
export async function sheetCommand(
  given: readonly string[],
  around: SheetSurroundings,
): Promise<0 | 2> {
  const asked = askedFor(given);
  if ('wrong' in asked) {
    around.complain(`${asked.wrong}${USAGE}\n`);
    return 2;
  }
  const layout = readGiven(asked.file, around);
  if (!layout) return 2;
  const content = await contentOf(layout, asked);
  try {
    around.write(asked.out, content);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    around.complain(`${asked.out} can't be written: ${why}\n`);
    return 2;
  }
  return 0;
}

async function contentOf(layout: Layout, asked: Asked): Promise<string | Uint8Array> {
  const { format, size, orientation, seenFrom } = asked;
  const report = createAnalyst()(layout);
  const words = sheetWords(layout, report, PAPER_NAMES[size]);
  const choice = { paper: { size, orientation }, seenFrom };
  switch (format) {
    case 'pdf': {
      const sheets = makeSheets({ layout, report, words }, choice);
      return toPdf(
        sheets.flatMap(({ pages }) => pages),
        layout.name,
      );
    }
    case 'svg': {
      const [page] = makeSheet('placement', { layout, report, words }, choice).pages;
      return page ? toSvg(page) : '';
    }
    case 'dxf':
      // CAD has the deck's own axes: x to the player's right, y to the audience.
      return toDxf(planDrawing(layout, report, 'player', words.forms));
  }
}

function askedFor(given: readonly string[]): Asked | { readonly wrong: string } {
  const rest = [...given];
  /** Takes an option with its values off the list; null where a value is missing. */
  const take = (option: string, values: number): readonly string[] | null | undefined => {
    const at = rest.indexOf(option);
    if (at < 0) return undefined;
    const [, ...found] = rest.splice(at, values + 1);
    return found.length === values ? found : null;
  };
  const [wantedFormat, out] = take('--sheet', 2) ?? [];
  const format = FORMATS.find((each) => each === wantedFormat);
  if (!format || out === undefined || out.startsWith('--')) {
    return { wrong: `Expected one of ${FORMATS.join(', ')} and a file to write after --sheet. ` };
  }
  const one = <Value extends string>(option: string, choices: readonly Value[]) => {
    const found = take(option, 1);
    return found === undefined
      ? choices[0]
      : choices.find((each) => each === found?.[0]?.toLowerCase());
  };
  const size = one('--paper', PAPERS);
  if (!size) return { wrong: `Expected one of ${PAPERS.join(', ')} after --paper. ` };
  const orientation = one('--orientation', ORIENTATIONS);
  if (!orientation) {
    return { wrong: `Expected one of ${ORIENTATIONS.join(', ')} after --orientation. ` };
  }
  const seenFrom = one('--from', ['house', 'player'] as const);
  if (!seenFrom) return { wrong: 'Expected house or player after --from. ' };
  const unknown = rest.find((word) => word.startsWith('--'));
  if (unknown !== undefined) return { wrong: `Unknown option ${unknown}. ` };
  const [file, ...more] = rest;
  if (file === undefined || more.length > 0) return { wrong: '' };
  return { file, format, out, size, orientation, seenFrom };
}
