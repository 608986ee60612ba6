import type { Layout } from '../layout/layout.ts';
import type { Report } from '../report/report.ts';
import type { SeenFrom } from '../rig/standpoint.ts';
import type { Mm } from '../units/quantity.ts';
import type { Mark, Page } from './mark.ts';
import { elevationBody } from './pages/elevationPage.ts';
import { placementBody, type SheetSource } from './pages/placementPage.ts';
import { type Flowing, flowedBodies } from './pages/tablePages.ts';
import { bodyRoom, framed } from './paper/frame.ts';
import type { Room } from './paper/layOut.ts';
import type { Paper } from './paper/paper.ts';
import { SHEETS, type SheetName, type SheetWords } from './words.ts';

/** How sheets are wanted. */
export interface SheetChoice {
  readonly paper: Paper;
  readonly seenFrom: SeenFrom;
}

/** One sheet: its page, and those on which its table goes on where it is too long for one. */
export interface Sheet {
  readonly name: SheetName;
  readonly pages: readonly Page[];
}

/** One sheet of a layout with its report. Same input, same marks. */
export function makeSheet(
  name: SheetName,
  from: { readonly layout: Layout; readonly report: Report; readonly words: SheetWords },
  { paper, seenFrom }: SheetChoice,
): Sheet {
  const { words } = from;
  const bodies = bodiesOf(name, { ...from, seenFrom }, bodyRoom(paper));
  const pages = bodies.map((body, index) =>
    framed(paper, body, {
      name: words.layoutName,
      about: words.about,
      title: words.titles[name],
      page: words.page(index + 1, bodies.length),
      caution: words.caution,
    }),
  );
  return { name, pages };
}

/** Every sheet of a layout, in order. */
export const makeSheets = (
  from: { readonly layout: Layout; readonly report: Report; readonly words: SheetWords },
  choice: SheetChoice,
): readonly Sheet[] => SHEETS.map((name) => makeSheet(name, from, choice));

/** Letters of what is read on a dark stage, paper in hand: 9 points. What finds no room goes on, on the next page. */
const READ_ON_STAGE: Mm = 3.2;

function bodiesOf(name: SheetName, source: SheetSource, room: Room): readonly (readonly Mark[])[] {
  const { words } = source;
  switch (name) {
    case 'placement': {
      const { marks, rest } = placementBody(source, room);
      // A table that has the page to itself takes along how it is measured.
      const how: readonly Flowing[] =
        rest === words.measures ? [{ kind: 'text', text: words.howToMeasure }] : [];
      const more = rest ? flowedBodies([...how, { kind: 'table', table: rest }], room) : [];
      return [marks, ...more];
    }
    case 'elevations':
      return [elevationBody(source, room)];
    case 'mics':
      return flowedBodies([{ kind: 'table', table: words.mics }], room);
    case 'check':
      return flowedBodies(checkParts(words), room);
    case 'setUp':
      return flowedBodies(
        [
          { kind: 'text', text: words.howToMeasure },
          { kind: 'table', table: words.setUp },
        ],
        room,
        READ_ON_STAGE,
      );
  }
}

function checkParts({ check, clearances, findings }: SheetWords): readonly Flowing[] {
  return [
    { kind: 'heading', text: check.clearances },
    { kind: 'text', text: check.tally },
    { kind: 'table', table: clearances },
    { kind: 'heading', text: check.findings },
    findings.rows.length > 0
      ? { kind: 'table', table: findings }
      : { kind: 'text', text: check.noFindings },
    { kind: 'heading', text: check.signOff },
    ...check.signOffLines.map((text): Flowing => ({ kind: 'text', text })),
    ...(check.blanks.length > 0 ? [{ kind: 'blanks', labels: check.blanks } as const] : []),
  ];
}
