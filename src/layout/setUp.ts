import { z } from 'zod';

/** Keys of the steps of the set-up list that are done. A key of a step that is gone counts for nothing. */
export const setUpSchema = z.strictObject({ done: z.array(z.string().min(1).max(80)).max(600) });
export type SetUp = z.infer<typeof setUpSchema>;
