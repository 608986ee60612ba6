import type { Finding } from '../../report/report.ts';
import { useOpen } from '../parts/useOpen.ts';
import { findingWords } from '../words/findingWords.ts';
import { NextStep } from './NextStep.tsx';

/** The whole of one finding: what, where, what to do. */
export function FindingBody({ finding }: { readonly finding: Finding }) {
  const { layout, report } = useOpen();
  const { title, detail, next } = findingWords(finding, layout, report.clearances);
  return (
    <>
      <strong>{title}</strong>
      <p>{detail}</p>
      <NextStep finding={finding} next={next} />
    </>
  );
}
