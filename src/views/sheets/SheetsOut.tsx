import type { Layout } from '../../layout/layout.ts';
import { planDrawing } from '../../sheet/drawing/planDrawing.ts';
import type { Sheet } from '../../sheet/makeSheets.ts';
import type { Page } from '../../sheet/mark.ts';
import type { Paper } from '../../sheet/paper/paper.ts';
import { isPrintable } from '../../sheet/paper/printable.ts';
import { SHEETS, type SheetName } from '../../sheet/words.ts';
import { toSvg } from '../../sheet/writers/toSvg.ts';
import { FieldProblem } from '../fields/FieldProblem.tsx';
import { useActions } from '../parts/useActions.ts';
import { useOpen } from '../parts/useOpen.ts';
import { useTask } from '../parts/useTask.ts';
import { SHEET_TITLES } from '../words/sheetTitles.ts';
import { sheetWords } from '../words/sheetWords.ts';
import { pngOf } from './pngOf.ts';
import { PAPER_NAMES } from './usePaper.ts';
import { usePrintPages } from './usePrintPages.tsx';

interface SheetsOutProps {
  readonly name: SheetName;
  readonly paper: Paper;
  readonly sheetOf: (name: SheetName) => Sheet;
}

/** Sheets as files and on the printer. PDF and DXF come with libraries of their own, loaded when one is asked for. */
export function SheetsOut({ name, paper, sheetOf }: SheetsOutProps) {
  const { layout, report } = useOpen();
  const actions = useActions();
  const task = useTask();
  const { printed, printPages } = usePrintPages();
  const on = `${PAPER_NAMES[paper.size]} ${paper.orientation}`;
  const pdf = (what: string, pages: readonly Page[]) =>
    task.run('PDF', async () => {
      const { toPdf } = await import('../../sheet/writers/toPdf.ts');
      const bytes = await toPdf(pages, `${layout.name}: ${what}`);
      await actions.exportSheet(`${what}, ${on}`, 'pdf', new Uint8Array(bytes));
    });
  const plan = (): Page => {
    const [page] = sheetOf('placement').pages;
    if (!page) throw new Error('there is no plan.');
    return page;
  };
  const dxf = () =>
    task.run('DXF', async () => {
      const { toDxf } = await import('../../sheet/writers/toDxf.ts');
      const { forms } = sheetWords(layout, report, PAPER_NAMES[paper.size]);
      // CAD has the deck's own axes: x to the player's right, y to the audience.
      await actions.exportSheet('plan', 'dxf', toDxf(planDrawing(layout, report, 'player', forms)));
    });
  const all = () => SHEETS.flatMap((each) => sheetOf(each).pages);
  const replaced = !isPrintable(wordsIn(layout));
  return (
    <section className="sheets-out" aria-label="Out of the app">
      <div className="page-buttons">
        <button
          type="button"
          className="primary"
          disabled={task.busy}
          onClick={() => pdf('sheets', all())}
        >
          All sheets as PDF
        </button>
        <button
          type="button"
          disabled={task.busy}
          onClick={() => pdf(SHEET_TITLES[name], sheetOf(name).pages)}
        >
          This sheet as PDF
        </button>
        <button type="button" onClick={() => printPages(sheetOf(name).pages)}>
          Print this sheet
        </button>
        <button
          type="button"
          disabled={task.busy}
          onClick={() =>
            task.run('SVG', () => actions.exportSheet(`plan, ${on}`, 'svg', toSvg(plan())))
          }
        >
          Plan as SVG
        </button>
        <button
          type="button"
          disabled={task.busy}
          onClick={() =>
            task.run('PNG', async () => {
              const page = plan();
              await actions.exportSheet(`plan, ${on}`, 'png', await pngOf(toSvg(page), page));
            })
          }
        >
          Plan as PNG
        </button>
        <button type="button" disabled={task.busy} onClick={dxf}>
          Plan as DXF (mm)
        </button>
      </div>
      {replaced && (
        <p className="small soft">
          Some letters are not among those of the PDF’s fonts and are written by their nearest, or
          as “?”. Print this sheet to keep them: every print dialog can save as PDF.
        </p>
      )}
      {task.busy && <p role="status">Writing the file…</p>}
      <FieldProblem text={task.failure} />
      {printed}
    </section>
  );
}

/** What people have written on a layout and sheets repeat. */
const wordsIn = ({ name, venue, player, pieces, mics, ownClasses }: Layout): string =>
  [
    name,
    venue.name,
    player.name,
    ...[...pieces, ...mics, ...ownClasses].map((each) => each.name),
  ].join(' ');
