import type { Document } from './document.ts';

/** How cables were gathered before it could be chosen: not at all. */
const NEATNESS = 0;

/** From version 3, which knew no sign-off, no layout that it was started from, no set-up ticks and no loom. */
export const fromVersion3 = (document: Document): Document => ({
  ...document,
  schema: 4,
  cabling: gathered(document['cabling']),
  origin: null,
  signOffs: [],
  setUp: { done: [] },
});

/** What is no record is left for the validator to name. */
const gathered = (cabling: unknown): unknown =>
  typeof cabling === 'object' && cabling !== null && !Array.isArray(cabling)
    ? { ...cabling, neatness: NEATNESS }
    : cabling;
