import { z } from 'zod';
import { idField, nameField } from '../fields.ts';
import { mountSchema } from './mount.ts';

/** A placed microphone: its class, what it must hear (the first is its own source), how it is held, where it is plugged. */
export const micSchema = z.strictObject({
  id: idField,
  name: nameField,
  /** A class of the catalogue, or one of the layout's own classes. */
  micClass: idField,
  hears: z.array(idField).max(20),
  mount: mountSchema,
  /** The numbered input of the box; null: not plugged. */
  input: z.number().int().min(1).max(64).nullable(),
});
export type Mic = z.infer<typeof micSchema>;
