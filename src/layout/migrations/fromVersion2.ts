import type { Document } from './document.ts';

/**
 * From version 2, which knew no input list: everything about it is as usual. The values stand here and not in the catalogue, so
 * that an old file is read in the same way for ever.
 */
export const fromVersion2 = (document: Document): Document => ({
  ...document,
  schema: 3,
  patch: {
    style: 'rock',
    order: null,
    channels: [],
    splits: [],
    micImpedance: 150,
    spares: {
      usual: { percent: 10, least: 1 },
      byKind: {
        box: { percent: 0, least: 0 },
        tail: { percent: 0, least: 0 },
        sandbag: { percent: 0, least: 0 },
      },
    },
    tapeRolls: 1,
    ticks: [],
    lineCheck: [],
  },
});
