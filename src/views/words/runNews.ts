import type { Layout } from '../../layout/layout.ts';
import type { RunRow } from '../../report/report.ts';
import { showCableLength } from '../../units/lengthText.ts';
import { listed, nameOf } from './nameOf.ts';
import { stockWords } from './runWords.ts';

/**
 * What a change did to cables that makes them another job: which have lost their way, found one again, or outgrown the cable that served them.
 * `Cables: Snare mic has no free way any more; Ride mic outgrows 5 m, now 7.5 m cable.` Empty where there is nothing of it. That a run takes another cable
 * only because others do is not told.
 */
export function runNews(
  before: readonly RunRow[],
  after: readonly RunRow[],
  layout: Layout,
): string {
  const old = new Map(before.map((run) => [run.mic, run]));
  const pairs = after.flatMap((run) => {
    const was = old.get(run.mic);
    return was && was !== run ? [{ was, run }] : [];
  });
  const named = (which: (pair: (typeof pairs)[number]) => boolean): readonly string[] =>
    pairs.filter(which).map(({ run }) => nameOf(layout, run.mic));
  const lost = named(({ was, run }) => hasWay(was) && !hasWay(run));
  const found = named(({ was, run }) => !hasWay(was) && hasWay(run));
  const parts = [
    ...(lost.length > 0 ? [`${listed(lost)} ${has(lost)} no free way any more`] : []),
    ...(found.length > 0 ? [`${listed(found)} ${has(found)} a free way again`] : []),
    ...pairs
      .filter(({ was, run }) => outgrows(was, run))
      .map(({ was, run }) => outgrownWords(was, run, layout)),
  ];
  return parts.length === 0 ? '' : `Cables: ${parts.join('; ')}.`;
}

const hasWay = ({ through }: RunRow): boolean => through.length === 0;
const has = (names: readonly string[]): string => (names.length === 1 ? 'has' : 'have');
const carriedBy = ({ carried }: RunRow): number => carried.reduce((sum, each) => sum + each, 0);

const outgrows = (was: RunRow, run: RunRow): boolean =>
  was.carried.length > 0 && run.total > was.total && run.total > carriedBy(was);

const outgrownWords = (was: RunRow, run: RunRow, layout: Layout): string =>
  `${nameOf(layout, run.mic)} outgrows ${was.carried
    .map((length) => showCableLength(length, layout.units))
    .join(' + ')}, now ${stockWords(run, layout)}`;
