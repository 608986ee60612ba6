import type { Layout } from '../../layout/layout.ts';
import type { PatchCode } from '../../patch/fact.ts';
import { inputList } from '../../patch/inputList.ts';
import { patchFacts } from '../../patch/patchFacts.ts';
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
export function patchFindings(rig: Rig, { patch }: Pick<Layout, 'patch'>): readonly Finding[] {
  const tips = new Map(rig.mics.map(({ mic, tip }) => [mic.id, tip]));
  return patchFacts(inputList(rig, patch), patch).flatMap(
    ({ code, ids, numbers }): readonly Finding[] => {
      if (!isOwn(code)) return [];
      const about = ids.filter((id) => tips.has(id));
      const [main] = about;
      return [
        {
          key: [code, ...ids, numbers['leg'] ?? numbers['channel'] ?? ''].join(':'),
          code,
          severity: SEVERITY[code],
          about,
          place: main === undefined ? undefined : tips.get(main),
          numbers,
        },
      ];
    },
  );
}
