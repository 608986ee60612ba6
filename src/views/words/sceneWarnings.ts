import type { Layout } from '../../layout/layout.ts';
import type { Report } from '../../report/report.ts';
import { type Scene, sceneFindings } from '../../report/sceneFindings.ts';
import { findingWords } from './findingWords.ts';
import { counted } from './nameOf.ts';
import { severityVerdict } from './verdictWords.ts';

/** Something that would go wrong, said before anyone agrees to it. */
export interface Warning {
  readonly verdict: 'struck' | 'tight';
  readonly text: string;
}

/** Lines that are named one by one: a kit that hangs over an edge has one for every piece. */
const MOST_NAMED = 5;

/** What is open about all that stands there, or about the way out, by the findings' own titles; how many more there are comes last. */
export function sceneWarnings(scene: Scene, report: Report, layout: Layout): readonly Warning[] {
  const open = sceneFindings(report)[scene];
  const named = open.length > MOST_NAMED + 1 ? open.slice(0, MOST_NAMED) : open;
  const more = open.slice(named.length);
  return [
    ...named.map((finding): Warning => {
      const { title } = findingWords(finding, layout);
      return { verdict: severityVerdict(finding.severity), text: title };
    }),
    ...(more.length > 0
      ? [
          {
            verdict: severityVerdict(
              more.some(({ severity }) => severity === 'stop') ? 'stop' : 'warn',
            ),
            text: `${counted(more.length, 'finding')} more like these: see the findings`,
          } as const,
        ]
      : []),
  ];
}
