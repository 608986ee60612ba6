import type { Finding, PatchFindingCode } from '../../report/report.ts';

/** What the sentence of a finding about the patch is made from. */
interface PatchSubject {
  readonly finding: Pick<Finding, 'numbers'>;
  readonly main: string;
  readonly all: string;
}

interface PatchText {
  readonly title: string;
  readonly detail: string;
  readonly next: string;
}

const number = ({ finding }: PatchSubject, name: string, digits = 0): string =>
  finding.numbers[name]?.toFixed(digits) ?? 'some';

/** What is wrong with the input list, why it matters, and what to do. */
const inputSentences = {
  'phantom-missing': (s: PatchSubject): PatchText => ({
    title: `${s.main} has no 48 V`,
    detail: 'Its electronics run on phantom power: without it there is no signal, or next to none.',
    next: 'Mute the channel, then switch 48 V on in the input list.',
  }),
  'ribbon-with-phantom': (s: PatchSubject): PatchText => ({
    title: `${s.main} is a ribbon and gets 48 V`,
    detail:
      'With a faulty cable, at a patch bay or when it is plugged under power, current flows through the ribbon and can stretch or burn it.',
    next: 'Switch its 48 V off before it is plugged.',
  }),
  'phantom-not-needed': (s: PatchSubject): PatchText => ({
    title: `${s.main} gets 48 V and needs none`,
    detail: 'It does the mic no good, and plugging it under power thumps.',
    next: 'Switch its 48 V off.',
  }),
  'input-two-channels': (s: PatchSubject): PatchText => ({
    title: `Box input ${number(s, 'input')} feeds ${number(s, 'channels')} channels`,
    detail: `The channels of ${s.main} share one preamplifier: its gain, pad and 48 V.`,
    next: 'Set gain, pad and 48 V for all of them together.',
  }),
  'channel-twice': (s: PatchSubject): PatchText => ({
    title: `Channel ${number(s, 'channel')} is used twice`,
    detail: `${s.all}: one channel can carry one signal.`,
    next: 'Give one of the rows another channel number.',
  }),
};

/** What is wrong with the ends of a split. */
const endSentences = {
  'split-of-split': (): PatchText => ({
    title: 'A split takes its signal from another split',
    detail:
      'Every further input takes level, it is open which leg is hard-wired to the mic, and a transformer lets no 48 V through.',
    next: 'Take one splitter with enough legs, straight from the mic.',
  }),
  'split-of-nothing': (): PatchText => ({
    title: 'A split takes its signal from nothing',
    detail: 'The mic it belonged to is not there.',
    next: 'Choose another mic for it, or remove the split.',
  }),
  'mic-split-twice': (s: PatchSubject): PatchText => ({
    title: `${s.main} is split twice`,
    detail: 'Every further input takes level, and it is open which leg is hard-wired to the mic.',
    next: 'Take one splitter with enough legs.',
  }),
  'split-few-legs': (s: PatchSubject): PatchText => ({
    title: `The split of ${s.main} has ${number(s, 'legs')} of at least 2 legs`,
    detail: 'Nothing is split.',
    next: 'Add where else the signal goes, or remove the split.',
  }),
  'split-direct-legs': (s: PatchSubject): PatchText =>
    s.finding.numbers.isolated === undefined
      ? {
          title: `The split of ${s.main} has ${number(s, 'direct')} direct legs`,
          detail:
            'A passive split has one leg that is hard-wired to the mic; the others hang on the transformer.',
          next: 'Make one leg direct and the others isolated.',
        }
      : {
          title: `The plain Y of ${s.main} has no isolated leg`,
          detail: 'A plain Y joins wires: there is no transformer that could isolate one.',
          next: 'Take a transformer split, or make the legs direct.',
        },
  'split-channel-legs': (s: PatchSubject): PatchText => ({
    title: `${number(s, 'channel')} legs of the split of ${s.main} go to its channel`,
    detail: "A mic's row of the input list is one end.",
    next: 'Give the other legs the name of where they go.',
  }),
};

/** What is wrong with the power, ground and load of a split. */
const powerSentences = {
  'split-phantom-none': (s: PatchSubject): PatchText => ({
    title: `No end of the split gives ${s.main} its 48 V`,
    detail: 'Its electronics run on phantom power: without it there is no signal, or next to none.',
    next: 'Let exactly one end give 48 V: the one on the direct leg.',
  }),
  'split-phantom-several': (s: PatchSubject): PatchText => ({
    title: `${number(s, 'supplies')} ends give ${s.main} 48 V`,
    detail: `Into a short they drive ${number(s, 'short')} mA, one alone ${number(s, 'shortOfOne')} mA; and either may be switched off alone.`,
    next: 'Let exactly one end give 48 V, and agree which.',
  }),
  'split-phantom-isolated': (s: PatchSubject): PatchText => ({
    title: `48 V on leg ${number(s, 'leg')} does not reach ${s.main}`,
    detail: 'The leg is isolated: its transformer passes audio only.',
    next: 'Give 48 V at the end of the direct leg.',
  }),
  'split-lift-direct': (s: PatchSubject): PatchText => ({
    title: `The direct leg ${number(s, 'leg')} of ${s.main} is lifted`,
    detail:
      "48 V comes back on pin 1: lifted, a mic that needs it is dead or hums, and the mic's cable has a screen that ends nowhere.",
    next: 'Lift an isolated leg instead.',
  }),
  'split-plain-y': (s: PatchSubject): PatchText => ({
    title: `${s.main} is split with a plain Y`,
    detail: `It joins the grounds of both ends, which may hum; nothing says which end gives 48 V; ${number(s, 'lost', 1)} dB are lost into ${number(s, 'load')} Ω.`,
    next: 'Take a splitter with a transformer, or check for hum and who gives 48 V.',
  }),
  'split-load-low': (s: PatchSubject): PatchText => ({
    title: `The split of ${s.main} loads it with ${number(s, 'load')} Ω`,
    detail: `Less than five times its ${number(s, 'source')} Ω takes ${number(s, 'lost', 1)} dB and, from a dynamic mic, tone.`,
    next: 'Leave out a leg, or take a splitter with its own amplifier.',
  }),
};

/** The words of every finding about the patch. */
export const patchSentences: Readonly<
  Record<PatchFindingCode, (subject: PatchSubject) => PatchText>
> = { ...inputSentences, ...endSentences, ...powerSentences };
