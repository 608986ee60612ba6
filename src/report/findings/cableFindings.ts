import type { CablingCode, CablingFact } from '../../cabling/cablingFacts.ts';
import type { Finding, Severity } from '../report.ts';

const SEVERITY: { readonly [Code in CablingCode]: Severity } = {
  'run-no-way': 'stop',
  'run-no-stock': 'stop',
  'run-stock-taken': 'stop',
  'input-twice': 'stop',
  'input-beyond-box': 'stop',
  'more-mics-than-inputs': 'stop',
  'box-in-obstacle': 'stop',
  'run-unplugged': 'warn',
  'lane-crossed': 'warn',
  'lane-blocked': 'warn',
  'box-off-deck': 'note',
};

/** What is wrong with cables and box, as findings. */
export const cableFindings = (facts: readonly CablingFact[]): readonly Finding[] =>
  facts.map(({ code, ids, place, numbers }) => ({
    key: [code, ...ids, numbers['input'] ?? ''].join(':'),
    code,
    severity: SEVERITY[code],
    about: ids,
    place,
    numbers,
  }));
