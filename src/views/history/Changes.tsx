import { useMemo } from 'react';
import type { Layout } from '../../layout/layout.ts';
import { createAnalyst } from '../../report/analyse.ts';
import { type Comparison, compareLayouts } from '../../report/compareLayouts.ts';
import type { Finding } from '../../report/report.ts';
import { useSession } from '../../session/session.ts';
import { showCableLength } from '../../units/lengthText.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { differenceWords, kitChangeLines } from '../words/changeWords.ts';
import { findingWords } from '../words/findingWords.ts';
import { momentWords, pointKindWords } from '../words/historyWords.ts';
import type { HistoryView, Looked } from './useHistory.ts';

interface ChangesProps {
  readonly looked: Looked;
  readonly view: HistoryView;
}

/** What differs from the point that is looked at to what is open, or to another point. */
export function Changes({ looked, view }: ChangesProps) {
  const now = useSession(({ gesture, open }) => gesture?.before ?? open?.layout ?? null);
  const after = view.against?.layout ?? now;
  const others = (view.rows ?? []).filter(({ revision }) => revision !== looked.row.revision);
  return (
    <section className="history-changes" aria-labelledby="changes-title">
      <h3 id="changes-title">What changed since</h3>
      <SelectField
        label="From this point to"
        value={String(view.against?.row.revision ?? '')}
        options={[
          { value: '', text: 'Now' },
          ...others
            .filter(({ tip }) => tip !== 'holds')
            .map((row) => ({
              value: String(row.revision),
              text: `${momentWords(row.at)}, ${pointKindWords(row)}`,
            })),
        ]}
        onChoose={(value) =>
          view.compareWith(others.find(({ revision }) => String(revision) === value) ?? null)
        }
      />
      {after !== null && <ChangeLists before={looked.layout} after={after} />}
    </section>
  );
}

interface Pair {
  readonly before: Layout;
  readonly after: Layout;
}

function ChangeLists({ before, after }: Pair) {
  const comparison = useMemo(() => {
    const analyse = createAnalyst();
    return compareLayouts(
      { layout: before, report: analyse(before) },
      { layout: after, report: analyse(after) },
    );
  }, [before, after]);
  const told = (findings: readonly Finding[], layout: Layout): readonly string[] =>
    findings.map((finding) => findingWords(finding, layout).title);
  const lists = [
    { title: 'Moved or changed', lines: kitChangeLines(comparison.kit, after) },
    { title: 'Findings gained', lines: told(comparison.gained, after) },
    { title: 'Findings gone', lines: told(comparison.lost, before) },
    { title: 'Cables', lines: runLines(comparison, after) },
    {
      title: 'Stage, box and venue',
      lines: comparison.stage.map((difference) => differenceWords(difference, after.units)),
    },
  ].filter(({ lines }) => lines.length > 0);
  if (lists.length === 0) return <p>Nothing of the kit, the cables or the stage differs.</p>;
  return lists.map(({ title, lines }) => (
    <div key={title} className="history-list">
      <h4>{title}</h4>
      <ul>
        {lines.map((line, index) => (
          // Two lines may say the same of two things.
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is made anew as a whole
          <li key={`${index} ${line}`}>{line}</li>
        ))}
      </ul>
    </div>
  ));
}

function runLines({ runs }: Comparison, { units }: Layout): readonly string[] {
  const length = (run: number | null) => (run === null ? 'none' : showCableLength(run, units));
  return runs.map(
    ({ name, before, after, tooShort }) =>
      `${name}: ${length(before)} → ${length(after)}${tooShort ? ', the cable of before is too short' : ''}`,
  );
}
