import { type ReactNode, useMemo } from 'react';
import { createAnalyst } from '../../../report/analyse.ts';
import { compareLayouts } from '../../../report/compareLayouts.ts';
import { asInOrigin } from '../../../report/nextVenue.ts';
import type { Finding } from '../../../report/report.ts';
import { airChange, createSoundReporter } from '../../../report/sound.ts';
import { type OpenLayout, showPage } from '../../../session/session.ts';
import { showCableLength, showLongLength } from '../../../units/lengthText.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { airChangeWords } from '../../sound/words/timingWords.ts';
import { findingWords } from '../../words/findingWords.ts';
import { signedByWords } from '../../words/signOffWords.ts';
import { KitFitPart } from './KitFitPart.tsx';

/** What this venue changes for the same kit, on one page. */
export function ChangedPage() {
  const open = useOpen();
  const before = useMemo(() => {
    const layout = asInOrigin(open.layout);
    return layout && { layout, report: createAnalyst()(layout) };
  }, [open.layout]);
  if (!before || !open.layout.origin) {
    return (
      <div className="page-part">
        <p>
          This layout was not started for a next venue, so there is no venue before it to set it
          beside. Earlier points of the same layout are compared in its history.
        </p>
        <div className="page-buttons">
          <button type="button" onClick={() => showPage('next-venue')}>
            Next venue
          </button>
          <button type="button" onClick={() => showPage('history')}>
            History
          </button>
        </div>
      </div>
    );
  }
  return <Changes before={before} now={open} />;
}

interface ChangesProps {
  readonly before: OpenLayout;
  readonly now: OpenLayout;
}

function Changes({ before, now }: ChangesProps) {
  const { gained, lost, runs, missing } = useMemo(() => compareLayouts(before, now), [before, now]);
  const { layout } = now;
  const long = (length: number | null) =>
    length === null ? 'none' : showLongLength(length, layout.units);
  const short = runs.filter(({ tooShort }) => tooShort);
  return (
    <div className="venue-changes">
      <Beside before={before} now={now} />
      <KitFitPart />
      <Part title={`New findings: ${gained.length}`} none="None: nothing is worse than it was.">
        {gained.map((finding) => (
          <FindingItem key={finding.key} finding={finding} of={now} isOpen />
        ))}
      </Part>
      <Part title={`Findings that are gone: ${lost.length}`} none="None.">
        {lost.map((finding) => (
          <FindingItem key={finding.key} finding={finding} of={before} />
        ))}
      </Part>
      <Part
        title={`Cables now too short: ${short.length}`}
        none="None: what served every run still reaches."
      >
        {short.map(({ mic, name: of, before: was, after, stockBefore, stockAfter }) => (
          <li key={mic}>
            {of}: {long(was)} before, {long(after)} now; it had a {long(stockBefore)}
            {stockAfter === null
              ? ', and none carried reaches'
              : `, it takes a ${long(stockAfter)}`}
          </li>
        ))}
      </Part>
      <Lengths before={before} now={now} />
      <Part title="Cables to bring" none="None: the cables carried serve every run.">
        {missing.after.map(({ length, count }) => (
          <li key={length}>
            {count} more of {showCableLength(length, layout.units)}
          </li>
        ))}
      </Part>
      <Delays before={before} now={now} />
      <div className="page-buttons">
        <button type="button" onClick={() => showPage(null)}>
          Back to the plan
        </button>
      </div>
    </div>
  );
}

/** What is set beside what, and that the sign-off went along. */
function Beside({ before, now }: ChangesProps) {
  const { venue } = before.layout;
  const { signOff } = now.report;
  const origin = now.layout.origin?.name ?? '';
  return (
    <p>
      The kit as it stands now, set beside the same kit in “{origin}”
      {venue.name !== '' && `, at ${venue.name}`}
      {venue.date !== null && `, ${venue.date}`}.{' '}
      {signOff.kind === 'holds' && `Signed off by ${signedByWords(signOff.signOff)}, and still so.`}
    </p>
  );
}

/** All cable together and the longest run, there and here. */
function Lengths({ before, now }: ChangesProps) {
  const long = (length: number) => showLongLength(length, now.layout.units);
  const [was, is] = [before.report.totals, now.report.totals];
  return (
    <section className="venue-part">
      <h2>Lengths of the runs</h2>
      <p>
        All together {long(was.cable)} before, {long(is.cable)} now; the longest {long(was.longest)}{' '}
        before, {long(is.longest)} now.
      </p>
    </section>
  );
}

function Delays({ before, now }: ChangesProps) {
  const { layout, report } = now;
  const words = useMemo(() => {
    const sound = createSoundReporter().of(layout, report);
    return airChangeWords(airChange(sound, before.layout.venue, layout.venue));
  }, [layout, report, before]);
  return (
    <section className="venue-part">
      <h2>Speed of sound and delays</h2>
      <p>{words}</p>
    </section>
  );
}

interface FindingItemProps {
  readonly finding: Finding;
  readonly of: OpenLayout;
  /** It is there now: what to do about it is said too. */
  readonly isOpen?: boolean;
}

function FindingItem({ finding, of, isOpen = false }: FindingItemProps) {
  const { title, detail, next } = findingWords(finding, of.layout, of.report.clearances);
  return (
    <li>
      <strong>{title}</strong>. {detail} {isOpen && <span className="next">{next}</span>}
    </li>
  );
}

interface PartProps {
  readonly title: string;
  readonly none: string;
  readonly children: readonly ReactNode[];
}

function Part({ title, none, children }: PartProps) {
  return (
    <section className="venue-part">
      <h2>{title}</h2>
      {children.length === 0 ? <p>{none}</p> : <ul className="stale-list">{children}</ul>}
    </section>
  );
}
