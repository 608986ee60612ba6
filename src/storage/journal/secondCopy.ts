import type { Id } from '../../layout/fields.ts';
import type { Gathered } from '../records/layoutRecords.ts';
import type { CheckAnswer, HeadBrief } from './journal.ts';

/** The journal as the page reaches it. Each of these rejects with the reason when it can't be done. */
export interface SecondCopy {
  check(heads: readonly HeadBrief[]): Promise<CheckAnswer>;
  /** Resolves once the bytes are on the disk. */
  append(bytes: Uint8Array): Promise<void>;
  gather(ids: readonly Id[]): Promise<readonly Gathered[]>;
  /** Starts a new file; what is appended from now on goes there. The older ones stay until it is complete. */
  startAnew(): Promise<void>;
  /** Gives up the files before the newest one. */
  dropOlder(): Promise<void>;
}

/** What the page asks the worker that holds the journal, and what it answers. */
export type CopyQuestion = { readonly key: number } & (
  | { readonly what: 'check'; readonly heads: readonly HeadBrief[] }
  | { readonly what: 'append'; readonly bytes: Uint8Array }
  | { readonly what: 'gather'; readonly ids: readonly Id[] }
  | { readonly what: 'startAnew' | 'dropOlder' }
);
export type CopyAnswer = { readonly key: number } & (
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly reason: string }
);

type Asked = CopyQuestion extends infer Q
  ? Q extends { key: number }
    ? Omit<Q, 'key'>
    : never
  : never;

/** A second copy over a way to ask; answers come in any order. */
export function copyThrough(ask: (question: CopyQuestion) => void) {
  const waiting = new Map<number, (answer: CopyAnswer) => void>();
  let count = 0;
  let broken: string | null = null;
  const asked = <T>(question: Asked): Promise<T> =>
    new Promise((done, fail) => {
      if (broken !== null) throw new Error(broken);
      const key = ++count;
      waiting.set(key, (answer) =>
        answer.ok ? done(answer.value as T) : fail(new Error(answer.reason)),
      );
      ask({ ...question, key } as CopyQuestion);
    });
  const copy: SecondCopy = {
    check: (heads) => asked({ what: 'check', heads }),
    append: (bytes) => asked({ what: 'append', bytes }),
    gather: (ids) => asked({ what: 'gather', ids }),
    startAnew: () => asked({ what: 'startAnew' }),
    dropOlder: () => asked({ what: 'dropOlder' }),
  };
  return {
    copy,
    hear(answer: CopyAnswer): void {
      waiting.get(answer.key)?.(answer);
      waiting.delete(answer.key);
    },
    /** Nothing will be answered any more. */
    fail(reason: string): void {
      broken = reason;
      for (const [key, tell] of waiting) tell({ key, ok: false, reason });
      waiting.clear();
    },
  };
}
