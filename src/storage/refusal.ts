import { CannotOpen } from './connection.ts';
import type { Refusal } from './port.ts';

/** Does the work; what the storage said no to comes back as a value (rule S6). */
export async function orRefusal<T>(work: () => Promise<T>): Promise<T | Refusal> {
  try {
    return await work();
  } catch (error) {
    return { ok: false, kind: 'refused', reason: reasonOf(error), detail: detailOf(error) };
  }
}

function reasonOf(error: unknown): Refusal['reason'] {
  if (error instanceof CannotOpen) return 'unavailable';
  const name = error instanceof Error ? error.name : '';
  return name === 'QuotaExceededError' ? 'quota' : 'other';
}

function detailOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return error.message === '' ? error.name : error.message;
}
