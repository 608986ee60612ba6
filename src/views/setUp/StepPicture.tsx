import { useMemo } from 'react';
import { focusOf } from '../../report/placement/focus.ts';
import type { SetUpStep } from '../../report/placement/steps.ts';
import { useSession } from '../../session/session.ts';
import { stepPicture } from '../../sheet/pages/stepPicture.ts';
import { toSvg } from '../../sheet/writers/toSvg.ts';
import { useOpen } from '../parts/useOpen.ts';
import { svgAddress } from '../sheets/pngOf.ts';
import { sheetWords } from '../words/sheetWords.ts';

/** Where the thing at hand goes, with its measures from both edges. A picture: nothing can be moved by mistake. */
export function StepPicture({ step, title }: { readonly step: SetUpStep; readonly title: string }) {
  const { layout, report } = useOpen();
  const seenFrom = useSession(({ preferences }) => preferences.seenFrom);
  const words = useMemo(() => sheetWords(layout, report, ''), [layout, report]);
  const address = useMemo(() => {
    const focus = focusOf(step, layout, report);
    return svgAddress(toSvg(stepPicture({ layout, report, words, seenFrom }, focus)));
  }, [step, layout, report, words, seenFrom]);
  return <img className="step-picture" src={address} alt={`Plan: where ${title} goes`} />;
}
