import { stepFindings } from '../../report/placement/stepFindings.ts';
import type { SetUpStep } from '../../report/placement/steps.ts';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { findingWords } from '../words/findingWords.ts';
import { severityVerdict } from '../words/verdictWords.ts';

/** What is open about the thing at hand, before its measures. */
export function StepWarnings({ step }: { readonly step: SetUpStep }) {
  const { layout, report } = useOpen();
  return stepFindings(step, report).map((finding) => (
    <p key={finding.key} className="step-warning">
      <VerdictMark verdict={severityVerdict(finding.severity)} />
      <strong>{findingWords(finding, layout).title}</strong>
    </p>
  ));
}
