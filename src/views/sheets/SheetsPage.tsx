import { useState } from 'react';
import { prefer, useSession } from '../../session/session.ts';
import type { Page } from '../../sheet/mark.ts';
import { SHEETS, type SheetName } from '../../sheet/words.ts';
import { toSvg } from '../../sheet/writers/toSvg.ts';
import { Choice } from '../fields/Choice.tsx';
import { CAUTION_CLOSE, CAUTIONS } from '../words/cautionWords.ts';
import { SHEET_TITLES } from '../words/sheetTitles.ts';
import { svgAddress } from './pngOf.ts';
import { SheetsOut } from './SheetsOut.tsx';
import { PAPER_NAMES, usePaper } from './usePaper.ts';
import { useSheets } from './useSheets.ts';

/** The sheets of the open layout as they will be on paper, and the ways to get them there. */
export function SheetsPage() {
  const [name, setName] = useState<SheetName>('placement');
  const { paper, setSize, setOrientation } = usePaper();
  const seenFrom = useSession(({ preferences }) => preferences.seenFrom);
  const sheetOf = useSheets(paper);
  const { pages } = sheetOf(name);
  return (
    <div className="sheets">
      <div className="sheets-choices">
        <Choice
          label="Sheet"
          value={name}
          options={SHEETS.map((value) => ({ value, text: SHEET_TITLES[value] }))}
          onChoose={setName}
        />
        <Choice
          label="Paper"
          value={paper.size}
          options={[
            { value: 'a4', text: PAPER_NAMES.a4 },
            { value: 'letter', text: PAPER_NAMES.letter },
          ]}
          onChoose={setSize}
        />
        <Choice
          label="Orientation"
          value={paper.orientation}
          options={[
            { value: 'landscape', text: 'Landscape' },
            { value: 'portrait', text: 'Portrait' },
          ]}
          onChoose={setOrientation}
        />
        <Choice
          label="Seen from"
          value={seenFrom}
          options={[
            { value: 'house', text: 'Audience' },
            { value: 'player', text: 'Player' },
          ]}
          onChoose={(from) => prefer({ seenFrom: from })}
        />
      </div>
      <SheetsOut name={name} paper={paper} sheetOf={sheetOf} />
      <div className="sheet-pages">
        {pages.map((page, i) => (
          <SheetPicture
            // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name and never change places.
            key={i}
            page={page}
            alt={`${SHEET_TITLES[name]}, page ${i + 1} of ${pages.length}`}
          />
        ))}
      </div>
      <section className="page-part" aria-labelledby="sheet-cautions">
        <h2 id="sheet-cautions">Take care</h2>
        <ul className="sheet-cautions">
          {CAUTIONS.map(({ what, text }) => (
            <li key={what}>
              <strong>{what}.</strong> {text}
            </li>
          ))}
          <li>
            <strong>Lifting.</strong> Lift decks and cases with enough hands, by the rules where you
            are.
          </li>
        </ul>
        <p>{CAUTION_CLOSE}</p>
      </section>
    </div>
  );
}

function SheetPicture({ page, alt }: { readonly page: Page; readonly alt: string }) {
  return (
    <img
      className="sheet-picture"
      src={svgAddress(toSvg(page))}
      alt={alt}
      width={Math.round(page.width * 4)}
      height={Math.round(page.height * 4)}
    />
  );
}
