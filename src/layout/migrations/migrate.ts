/** A document as it came from JSON, of whatever version. */
export type Document = Readonly<Record<string, unknown>>;

/**
 * One step forward: turns a document of a version into one of the next version, whose number it sets. It assumes nothing
 * that the version's own validator did not promise, and never goes back.
 */
export type Migration = (document: Document) => Document;

/** The step forward from each released version, by the version it starts from. Version 1 is the first. */
export const migrations: ReadonlyMap<number, Migration> = new Map<number, Migration>();

/** A document of `version`, brought forward one version at a time as far as there are steps. */
export function migrated(document: Document, version: number): Document {
  const step = migrations.get(version);
  return step ? migrated(step(document), version + 1) : document;
}
