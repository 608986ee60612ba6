import type { Finding, FindingCode, Report } from '../report.ts';
import type { SetUpStep } from './steps.ts';

/** At which step of its subject a finding is told: when the thing is set down, when its cable is laid, at the box or at the deck. */
type ToldAt = 'thing' | 'cable' | 'box' | 'deck' | 'nowhere';

const TOLD_AT: Readonly<Record<FindingCode, ToldAt>> = {
  'mic-struck': 'thing',
  'mic-tight': 'thing',
  'mic-beyond-stand': 'thing',
  'mic-far-away': 'thing',
  'mic-not-close': 'thing',
  'piece-out-of-reach': 'thing',
  'piece-not-played': 'nowhere',
  // The step itself says what to do about it.
  'stand-may-tip': 'nowhere',
  'clip-metal-rim': 'thing',
  'mic-in-player': 'thing',
  'mic-near-player': 'thing',
  'mic-in-pedal': 'thing',
  'mic-in-shell': 'thing',
  'boom-through-piece': 'thing',
  'mic-against-stand': 'thing',
  'mic-against-mic': 'thing',
  'piece-in-piece': 'thing',
  'feet-overlap': 'thing',
  'base-off-deck': 'thing',
  'piece-off-deck': 'thing',
  'mic-move-wished': 'thing',
  'lane-blocked': 'thing',
  'run-no-way': 'cable',
  'run-joined': 'cable',
  'run-signal': 'cable',
  'stock-missing': 'cable',
  'run-unplugged': 'cable',
  'input-twice': 'cable',
  'input-beyond-box': 'cable',
  'lane-crossed': 'cable',
  'stairs-crossed': 'cable',
  'phantom-missing': 'cable',
  'phantom-not-needed': 'cable',
  'ribbon-with-phantom': 'cable',
  'channel-twice': 'cable',
  'input-two-channels': 'cable',
  'split-of-split': 'cable',
  'split-of-nothing': 'cable',
  'mic-split-twice': 'cable',
  'split-few-legs': 'cable',
  'split-direct-legs': 'cable',
  'split-channel-legs': 'cable',
  'split-phantom-none': 'cable',
  'split-phantom-several': 'cable',
  'split-phantom-isolated': 'cable',
  'split-lift-direct': 'cable',
  'split-plain-y': 'cable',
  'split-load-low': 'cable',
  'more-mics-than-inputs': 'box',
  'box-in-obstacle': 'box',
  'box-off-deck': 'box',
  'stairs-off-edge': 'deck',
  'stands-move-wished': 'nowhere',
  'lane-move-wished': 'nowhere',
  'sign-off-stale': 'nowhere',
  'sign-off-withheld': 'nowhere',
  'sign-off-reworked': 'nowhere',
  'sign-off-broken': 'nowhere',
};

/**
 * P3 Nobody is led into what is known to be wrong: a step tells every open finding that must or should be solved about its subject. What two
 *    things do to each other is told with both; what a mic does to a piece is told with the mic, which comes later and can still be moved.
 */
export function stepFindings(
  { subject }: Pick<SetUpStep, 'subject'>,
  { findings, clearances }: Pick<Report, 'findings' | 'clearances'>,
): readonly Finding[] {
  const open = findings.filter(({ severity }) => severity !== 'note');
  const at = (where: ToldAt) => open.filter((finding) => toldAt(finding) === where);
  switch (subject.kind) {
    case 'deck':
    case 'box':
      return at(subject.kind);
    case 'piece': {
      const mics = new Set(clearances.map(({ mic }) => mic));
      return at('thing').filter(
        ({ about }) => about.includes(subject.piece.id) && !mics.has(about[0] ?? ''),
      );
    }
    case 'mic':
      return at('thing').filter(({ about }) => about.includes(subject.mic.id));
    case 'run':
      return at('cable').filter(({ about }) => about.includes(subject.mic.id));
    case 'check':
      return [];
  }
}

/** The box in the way is about nothing that has an id; a stand that falls by itself is more than its step's word of weights. */
function toldAt({ code, about, severity }: Finding): ToldAt {
  if (code === 'stand-may-tip' && severity === 'stop') return 'thing';
  return code === 'lane-blocked' && about.length === 0 ? 'box' : TOLD_AT[code];
}
