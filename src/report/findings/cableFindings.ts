import type { CablingCode, CablingFact } from '../../cabling/cablingFact.ts';
import { listed } from '../../geometry/listed.ts';
import type { Finding, Severity } from '../report.ts';

const SEVERITY: { readonly [Code in CablingCode]: Severity } = {
  'run-no-way': 'stop',
  'stock-missing': 'stop',
  'input-twice': 'stop',
  'input-beyond-box': 'stop',
  'more-mics-than-inputs': 'stop',
  'box-in-obstacle': 'stop',
  'run-unplugged': 'warn',
  'lane-crossed': 'warn',
  'lane-blocked': 'warn',
  'stairs-crossed': 'warn',
  'stairs-off-edge': 'warn',
  'run-joined': 'note',
  'run-signal': 'note',
  'box-off-deck': 'note',
};

/** What is wrong with cables and box, as findings. */
export const cableFindings = (facts: readonly CablingFact[]): readonly Finding[] =>
  listed(facts, ({ code, ids, which, place, numbers }) => ({
    key:
      which === undefined
        ? [code, ...ids, numbers['input'] ?? ''].join(':')
        : [code, which].join(':'),
    code,
    severity: SEVERITY[code],
    about: ids,
    place,
    numbers,
  }));
