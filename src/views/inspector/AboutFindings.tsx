import type { Finding } from '../../report/report.ts';
import { FindingBody } from '../findings/FindingBody.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';

interface AboutFindingsProps {
  readonly of: (finding: Finding) => boolean;
}

/** Every finding about one thing, with what to do. */
export function AboutFindings({ of }: AboutFindingsProps) {
  const { report } = useOpen();
  const findings = report.findings.filter(of);
  if (findings.length === 0) return null;
  return (
    <ul className="about-findings">
      {findings.map((finding) => (
        <li key={finding.key}>
          <span className={`severity ${finding.severity}`}>
            <Icon name={finding.severity === 'note' ? 'target' : 'alert'} />
          </span>
          <div>
            <FindingBody finding={finding} />
          </div>
        </li>
      ))}
    </ul>
  );
}
