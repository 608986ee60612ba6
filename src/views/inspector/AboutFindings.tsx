import type { Finding } from '../../report/report.ts';
import { RemedyOffer } from '../findings/RemedyOffer.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { findingWords } from '../words/findingWords.ts';

interface AboutFindingsProps {
  readonly of: (finding: Finding) => boolean;
}

/** Every finding about one thing, with what to do. */
export function AboutFindings({ of }: AboutFindingsProps) {
  const { layout, report } = useOpen();
  const findings = report.findings.filter(of);
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
              <RemedyOffer finding={finding} />
            </div>
          </li>
        );
      })}
    </ul>
  );
}
