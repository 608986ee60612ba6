import type { Document, Migration } from './document.ts';
import { fromVersion1 } from './fromVersion1.ts';
import { fromVersion2 } from './fromVersion2.ts';
import { fromVersion3 } from './fromVersion3.ts';

/** The step forward from each released version, by the version it starts from. Version 1 is the first. */
export const migrations: ReadonlyMap<number, Migration> = new Map<number, Migration>([
  [1, fromVersion1],
  [2, fromVersion2],
  [3, fromVersion3],
]);

/** A document of `version`, brought forward one version at a time as far as there are steps. */
export function migrated(document: Document, version: number): Document {
  const step = migrations.get(version);
  return step ? migrated(step(document), version + 1) : document;
}
