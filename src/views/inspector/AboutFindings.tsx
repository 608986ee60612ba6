import type { Id } from '../../layout/fields.ts';
import type { FindingCode } from '../../report/report.ts';
import { useOpen } from '../parts/useOpen.ts';
import { Icon } from '../parts/Icon.tsx';
import { findingWords } from '../words/findingWords.ts';

interface AboutFindingsProps {
  readonly id: Id;
  /** Codes that are said elsewhere. */
  readonly without?: readonly FindingCode[];
}

/** Every finding about one thing, with what to do. */
export function AboutFindings({ id, without = [] }: AboutFindingsProps) {
  const { layout, report } = useOpen();
  const findings = report.findings.filter(
    (finding) => finding.about.includes(id) && !without.includes(finding.code),
  );
  if (findings.length === 0) return null;
  return (
    <ul className="about-findings">
      {findings.map((finding) => {
        const text = findingWords(finding, layout, report.clearances);
        return (
          <li key={finding.key}>
            <span className={`severity ${finding.severity}`}>
              <Icon name={finding.severity === 'note' ? 'target' : 'alert'} />
            </span>
            <div>
              <strong>{text.title}</strong>
              <p>{text.detail}</p>
              <p className="next">{text.next}</p>
            </div>
          </li>
        );
      })}
    </ul>
  );
}
