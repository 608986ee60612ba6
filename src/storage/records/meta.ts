import { z } from 'zod';
import { idField } from '../../layout/fields.ts';

const number = z.number().int().min(0).max(Number.MAX_SAFE_INTEGER);
const revision = z.number().int().min(1).max(Number.MAX_SAFE_INTEGER);
const tag = z.string().min(1).max(40);

/** One revision; its packed text is the record's body. */
const revisionMeta = z.object({
  kind: z.literal('revision'),
  id: idField,
  revision,
  parent: number,
  at: number,
  digest: z.string().regex(/^[0-9a-f]{64}$/),
  name: z.string().max(80),
  signed: z.string().max(80).nullable(),
  shared: z.boolean(),
});

/** Which revision of a layout holds, and what the user's hand set beside it. A later one replaces an earlier one. */
const headMeta = z.object({
  kind: z.literal('head'),
  id: idField,
  name: z.string().max(80),
  revision,
  asides: z.array(revision).max(200),
  removedAt: number.nullable(),
  favourite: z.boolean(),
  archived: z.boolean(),
  tags: z.array(tag).max(20),
});

/** Another name or mark of a revision that is there already. */
const pointMeta = z.object({
  kind: z.literal('point'),
  id: idField,
  revision,
  name: z.string().max(80),
  shared: z.boolean(),
});

/** The layout was given up for ever. */
const forgottenMeta = z.object({ kind: z.literal('forgotten'), id: idField });

/** All that is kept stands before this in the same file: older files are of no more use. */
const completeMeta = z.object({ kind: z.literal('complete') });

/** The first record of a library file. */
const libraryMeta = z.object({
  kind: z.literal('library'),
  version: z.number().int().min(1),
  madeAt: number,
  layouts: number,
});

/** The last record of a library file: without it the file is cut off. */
const endMeta = z.object({ kind: z.literal('end'), layouts: number });

export const metaSchema = z.discriminatedUnion('kind', [
  revisionMeta,
  headMeta,
  pointMeta,
  forgottenMeta,
  completeMeta,
  libraryMeta,
  endMeta,
]);
export type Meta = z.infer<typeof metaSchema>;
export type RevisionMeta = z.infer<typeof revisionMeta>;
export type HeadMeta = z.infer<typeof headMeta>;
