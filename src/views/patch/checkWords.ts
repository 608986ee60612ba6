import type { CheckStep } from '../../patch/lineCheck/lineCheck.ts';

/** What is planned, never what is: nothing here knows how the desk is set. */
const PHANTOM: Readonly<Record<CheckStep['phantom'], string>> = {
  'leave-on': '48 V: on in this plan. Check it at the desk.',
  'leave-off': '48 V: off in this plan. Check it at the desk.',
  'switch-on':
    '48 V: off in this plan, but this mic needs it. Mute, then switch it on at the desk.',
  'switch-off':
    '48 V: on in this plan, but it does not belong here. Mute, then switch it off at the desk.',
};

/** What to look at on the desk before a line is opened: 48 V, then polarity, pad and high-pass as they are planned. */
export function checkWords({ phantom, row }: CheckStep): readonly [string, string] {
  const { polarity, pad, highPass } = row;
  const settings = [
    `polarity ${polarity.value}`,
    pad.value > 0 ? `pad ${pad.value} dB` : 'no pad',
    highPass.value ? `high-pass ${highPass.value} Hz` : 'no high-pass',
  ];
  return [PHANTOM[phantom], `In this plan: ${settings.join(', ')}. Check them at the desk.`];
}
