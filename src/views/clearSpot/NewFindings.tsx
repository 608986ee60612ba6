import { isClearance } from '../../report/judgement.ts';
import type { Report } from '../../report/report.ts';
import { useOpen } from '../parts/useOpen.ts';
import { findingWords } from '../words/findingWords.ts';

/** What the change that is shown would bring with it, so that nothing comes as a surprise. */
export function NewFindings({ before }: { readonly before: Report }) {
  const { layout, report } = useOpen();
  const known = new Set(before.findings.map(({ key }) => key));
  const added = report.findings.filter(
    (finding) => !(known.has(finding.key) || isClearance(finding)),
  );
  if (added.length === 0) return null;
  return (
    <ul className="plain-list">
      {added.map((finding) => (
        <li key={finding.key}>It brings: {findingWords(finding, layout).title}.</li>
      ))}
    </ul>
  );
}
