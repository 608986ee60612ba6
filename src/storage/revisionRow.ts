import type { RevisionRow } from './port.ts';
import { type StoredDocument, type StoredHead, type StoredRevision, textOf } from './stored.ts';

/**
 * One point of the history. A revision holds who answered with it; whether that was an agreement stands in its document, so that points
 * of older versions of the app and of other tablets are told right too. `document` is needed only where someone answered.
 */
export function revisionRow(
  head: StoredHead,
  one: StoredRevision,
  document: StoredDocument | undefined,
): RevisionRow {
  const { revision, parent, at, name, signed } = one;
  const other = head.asides.includes(revision) ? 'aside' : null;
  const tip = head.revision === revision ? 'holds' : other;
  const isWithheld = signed !== null && document !== undefined && lastIsWithheld(document);
  return {
    ...{ revision, parent, at, name, tip },
    signed: isWithheld ? null : signed,
    withheld: isWithheld ? signed : null,
  };
}

/** Whether the last answer in a document was given without consent. What can't be read says nothing. */
function lastIsWithheld(document: StoredDocument): boolean {
  try {
    const { signOffs } = JSON.parse(textOf(document)) as { readonly signOffs?: unknown };
    const last: unknown = Array.isArray(signOffs) ? signOffs.at(-1) : undefined;
    return typeof last === 'object' && last !== null && 'consent' in last && last.consent === false;
  } catch {
    return false;
  }
}
