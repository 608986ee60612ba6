import { carriedOf } from '../../layout/catalogue/cableLengths.ts';
import type { Layout } from '../../layout/layout.ts';
import { type PullLine, SPLIT_LEG } from '../../patch/pull/pullList.ts';

type Stocked = Pick<Layout, 'cabling' | 'units'>;

/**
 * What the total of a line is made of, and of a cable of which fewer are carried how many are to be brought: `10 needed, 1 spare. You carry 10:
 * bring 1 more as the spare`. Empty where there is nothing but what is needed.
 */
export function pullLineWords(line: PullLine, layout: Stocked): string {
  const { needed, spare } = line;
  const parts = spare > 0 ? `${needed} needed, ${spare} spare` : '';
  return [parts, carriedWords(line, layout)].filter((words) => words !== '').join('. ');
}

/** Without a list of what is carried nothing is known to be short. */
function carriedWords({ kind, which, needed, total }: PullLine, layout: Stocked): string {
  if (kind !== 'cable' || which === SPLIT_LEG || layout.cabling.stock.length === 0) return '';
  const carried = carriedOf(layout, Number(which));
  const more = total - carried;
  if (more <= 0) return '';
  const spares = more === 1 ? 'the spare' : 'spares';
  return `You carry ${carried}: bring ${more} more${carried >= needed ? ` as ${spares}` : ''}`;
}
