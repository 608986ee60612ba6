import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Answer } from '../layout/signOff.ts';
import type { Mm } from '../units/quantity.ts';

/** A spot on the plan, kit frame. */
export interface Spot {
  readonly x: Mm;
  readonly y: Mm;
}

/** What the drummer said about one mic or about all stands or the way out, so far. */
export interface Said {
  readonly answer: 'fine' | 'move';
  readonly note: string;
  readonly wish: Spot | null;
}

/** Where the asking stands: at the beginning, at one question, or at the end. */
export type Step =
  | { readonly at: 'start' }
  | { readonly at: 'mic'; readonly index: number }
  | { readonly at: 'stands' }
  | { readonly at: 'lane' }
  | { readonly at: 'consent' };

/** What is asked: a mic by its id, or about all stands or the way out. */
export type Question =
  | { readonly about: 'mic'; readonly mic: Id }
  | { readonly about: 'stands' | 'lane' };

export interface Signing {
  /** The layout that is asked about; null while none is. */
  readonly layout: Id | null;
  readonly asked: readonly Id[];
  readonly step: Step;
  /** By {@link keyOf}. */
  readonly said: Readonly<Record<string, Said>>;
}

/** The asking that is under way. It stays while someone looks at the plan in between. */
export const signing = createStore<Signing>(() => ({
  layout: null,
  asked: [],
  step: { at: 'start' },
  said: {},
}));

export const useSigning = (): Signing => useStore(signing);

export const keyOf = (question: Question): string =>
  question.about === 'mic' ? `mic:${question.mic}` : question.about;

/** Asks about a layout's mics from the beginning; goes on where these mics of this layout are being asked about already. */
export function beginSigning(layout: Id, asked: readonly Id[]): void {
  const now = signing.getState();
  const same = now.layout === layout && now.asked.join() === asked.join();
  if (!same) startAgain(layout, asked);
}

export const startAgain = (layout: Id | null, asked: readonly Id[]): void =>
  signing.setState({ layout, asked, step: { at: 'start' }, said: {} });

export const goTo = (step: Step): void => signing.setState({ step });

/** What is asked at a step; null at the beginning and the end. */
export function questionAt({ asked, step }: Pick<Signing, 'asked' | 'step'>): Question | null {
  if (step.at === 'stands' || step.at === 'lane') return { about: step.at };
  const mic = step.at === 'mic' ? asked[step.index] : undefined;
  return mic === undefined ? null : { about: 'mic', mic };
}

/** The step after, or before, the one that is shown: the mics in turn, then the stands, then the way out. */
export function stepBeside({ asked, step }: Pick<Signing, 'asked' | 'step'>, by: 1 | -1): Step {
  const steps: readonly Step[] = [
    { at: 'start' },
    ...asked.map((_, index): Step => ({ at: 'mic', index })),
    { at: 'stands' },
    { at: 'lane' },
    { at: 'consent' },
  ];
  const here = steps.findIndex(
    (one) =>
      one.at === step.at && (one.at !== 'mic' || step.at !== 'mic' || one.index === step.index),
  );
  return steps[here + by] ?? step;
}

/** Keeps an answer; what it does not name stays as it was said before. */
export function say(question: Question, said: Partial<Said>): void {
  const key = keyOf(question);
  const now = signing.getState().said;
  const before: Said = now[key] ?? { answer: 'fine', note: '', wish: null };
  signing.setState({ said: { ...now, [key]: { ...before, ...said } } });
}

/** Everything is fine: what was asked to be moved before is taken back. */
export function sayAllFine(): void {
  signing.setState({ said: {}, step: { at: 'consent' } });
}

/** The answers as a sign-off keeps them. What was never answered counts as fine only with the consent to the whole. */
export function answersOf(
  { asked, said }: Pick<Signing, 'asked' | 'said'>,
  { mics }: Pick<Layout, 'mics'>,
  consent: boolean,
): Answer[] {
  const of = (question: Question): Said | undefined =>
    said[keyOf(question)] ?? (consent ? { answer: 'fine', note: '', wish: null } : undefined);
  return [
    ...asked.flatMap((id): Answer[] => {
      const mic = mics.find((one) => one.id === id);
      const about = of({ about: 'mic', mic: id });
      if (!mic || !about) return [];
      const { answer, note, wish } = about;
      return [
        {
          about: 'mic',
          mic: id,
          name: mic.name,
          answer,
          note: note.slice(0, 400),
          wish: answer === 'move' ? wish : null,
        },
      ];
    }),
    ...(['stands', 'lane'] as const).flatMap((about): Answer[] => {
      const said = of({ about });
      return said ? [{ about, answer: said.answer, note: said.note.slice(0, 400) }] : [];
    }),
  ];
}
