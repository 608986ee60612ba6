import type { PatchCode, PatchFact } from '../../patch/fact.ts';
import type { Rig } from '../../rig/placed.ts';
import type { Finding, PatchFindingCode, Severity } from '../report.ts';

const SEVERITY: { readonly [Code in PatchFindingCode]: Severity } = {
  'phantom-missing': 'stop',
  'ribbon-with-phantom': 'stop',
  'channel-twice': 'stop',
  'split-of-split': 'stop',
  'split-of-nothing': 'stop',
  'split-phantom-none': 'stop',
  'mic-split-twice': 'warn',
  'split-few-legs': 'warn',
  'split-direct-legs': 'warn',
  'split-channel-legs': 'warn',
  'split-phantom-several': 'warn',
  'split-phantom-isolated': 'warn',
  'split-lift-direct': 'warn',
  'split-load-low': 'warn',
  'phantom-not-needed': 'note',
  'input-two-channels': 'note',
  'split-plain-y': 'note',
};

const isOwn = (code: PatchCode): code is PatchFindingCode => Object.hasOwn(SEVERITY, code);

/** What is wrong with the input list and the splits, as findings about their mics, where the main mic is. */
export function patchFindings(facts: readonly PatchFact[], { mics }: Rig): readonly Finding[] {
  const own = facts.flatMap(({ code, ...fact }) => (isOwn(code) ? [{ code, ...fact }] : []));
  if (own.length === 0) return [];
  const tips = new Map(mics.map(({ mic, tip }) => [mic.id, tip]));
  return own.map(({ code, ids, numbers }): Finding => {
    const about = ids.filter((id) => tips.has(id));
    const [main] = about;
    return {
      key: [code, ...ids, numbers['leg'] ?? numbers['channel'] ?? ''].join(':'),
      code,
      severity: SEVERITY[code],
      about,
      place: main === undefined ? undefined : tips.get(main),
      numbers,
    };
  });
}
