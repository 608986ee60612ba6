/** A document as it came from JSON, of whatever version. */
export type Document = Readonly<Record<string, unknown>>;

/**
 * One step forward: turns a document of a version into one of the next version, whose number it sets. It is given documents that no
 * validator has seen, so it takes any shape, and leaves a fault where it is for the newest version's validator to name.
 */
export type Migration = (document: Document) => Document;
