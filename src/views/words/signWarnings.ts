import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { standsInSwing } from '../../report/findings/standsInSwing.ts';
import { whyNot } from '../../report/judgement.ts';
import type { Report } from '../../report/report.ts';
import { sceneFindings } from '../../report/sceneFindings.ts';
import { findingWords } from './findingWords.ts';
import { capitalised, counted, listed, nameOf } from './nameOf.ts';
import { sceneWarnings, type Warning } from './sceneWarnings.ts';
import { severityVerdict } from './verdictWords.ts';

/**
 * What is wrong as it stands, before anyone agrees to it: with the mics, `1 mic would be struck: Snare mic. Look at it first`, and of each that
 * stands in something, in what; with all that stands there, and with the way out.
 *
 * @param mics Who is asked about.
 */
export function signWarnings(
  mics: readonly Id[],
  report: Report,
  layout: Layout,
): readonly Warning[] {
  const scene = new Set(Object.values(sceneFindings(report)).flat());
  // Two mics that meet are told once; a stand that can't hold its mic with the stands.
  const found = new Set(mics.flatMap((mic) => whyNot(mic, report)));
  const within = [...found].filter((finding) => !scene.has(finding));
  return [
    ...within.map((finding): Warning => {
      const { title } = findingWords(finding, layout);
      return { verdict: severityVerdict(finding.severity), text: title };
    }),
    ...strikeWarnings(
      report.clearances.filter(
        (row) => mics.includes(row.mic) && !within.some((finding) => standsInSwing(row, finding)),
      ),
      layout,
    ),
    ...sceneWarnings('stands', report, layout),
    ...sceneWarnings('lane', report, layout),
  ];
}

/** Which mics would be struck, and which are tight. */
function strikeWarnings(rows: Report['clearances'], layout: Layout): readonly Warning[] {
  return (['struck', 'tight'] as const).flatMap((verdict) => {
    const mics = rows.filter((row) => row.verdict === verdict).map(({ mic }) => mic);
    if (mics.length === 0) return [];
    const would =
      verdict === 'struck' ? 'would be struck' : `${mics.length === 1 ? 'is' : 'are'} tight`;
    const them = mics.length === 1 ? 'it' : 'them';
    const names = listed(mics.map((mic) => nameOf(layout, mic)));
    return [
      {
        verdict,
        text: `${counted(mics.length, 'mic')} ${would}: ${capitalised(names)}. Look at ${them} first`,
      },
    ];
  });
}
