import { z } from 'zod';
import { idField, nameField, notesField, spotField } from './fields.ts';

/** What the drummer said on the screen, and exactly what was shown when it was said. */

/** About one mic: fine, or to be moved, with a note and a wished spot on the plan (kit frame). */
export const micAnswerSchema = z.strictObject({
  about: z.literal('mic'),
  mic: idField,
  /** Its name when it was asked about: the mic may be gone since. */
  name: nameField,
  answer: z.enum(['fine', 'move']),
  note: z.string().max(400),
  wish: spotField.nullable(),
});
export type MicAnswer = z.infer<typeof micAnswerSchema>;

/** About the stands and the access lane as a whole. */
export const sceneAnswerSchema = z.strictObject({
  about: z.enum(['stands', 'lane']),
  answer: z.enum(['fine', 'move']),
  note: z.string().max(400),
});
export type SceneAnswer = z.infer<typeof sceneAnswerSchema>;

export const answerSchema = z.union([micAnswerSchema, sceneAnswerSchema]);
export type Answer = z.infer<typeof answerSchema>;

/**
 * One sign-off. `signed` is the RFC 8785 text of player, pieces and mics as they were shown (see `signedText`), kept as it was for
 * ever (a later version of the document never rewrites it), and `digest` its SHA-256 in lower-case hexadecimal. It shows that what
 * stands here is what was shown; it does not show who approved, or when.
 */
export const signOffSchema = z.strictObject({
  id: idField,
  name: nameField,
  at: z.iso.datetime('a time as YYYY-MM-DDTHH:MM:SSZ'),
  /** Whether the drummer agreed to the whole. */
  consent: z.boolean(),
  /** What was asked this time: about mics that were signed off before and stayed as they were nothing is asked again. */
  answers: z.array(answerSchema).max(80),
  notes: notesField,
  /** The version of the document in whose shapes `signed` is written. */
  form: z.number().int().min(1),
  signed: z.string().max(400_000),
  digest: z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 digest: 64 hexadecimal digits'),
});
export type SignOff = z.infer<typeof signOffSchema>;

/** Whether it says what should change: who does not agree need not say why. */
export const asksForChange = ({ answers }: Pick<SignOff, 'answers'>): boolean =>
  answers.some(({ answer }) => answer === 'move');

/** Oldest first; the last one holds. */
export const signOffsSchema = z.array(signOffSchema).max(12);
