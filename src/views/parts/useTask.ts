import { useCallback, useState } from 'react';

export interface Task {
  /** What went wrong with the last task; empty when nothing did. */
  readonly failure: string;
  readonly busy: boolean;
  /** Starts a task; `what` names it for the message, as in `Export`. */
  run(what: string, task: () => Promise<unknown>): void;
  dismiss(): void;
}

/** Runs what may fail and keeps the message, so that no refusal goes unsaid. */
export function useTask(): Task {
  const [failure, setFailure] = useState('');
  const [busy, setBusy] = useState(false);
  const run = useCallback((what: string, task: () => Promise<unknown>) => {
    setBusy(true);
    setFailure('');
    task()
      .catch((error: unknown) => setFailure(`${what} failed: ${reasonOf(error)}`))
      .finally(() => setBusy(false));
  }, []);
  const dismiss = useCallback(() => setFailure(''), []);
  return { failure, busy, run, dismiss };
}

const reasonOf = (error: unknown): string =>
  error instanceof Error && error.message !== '' ? error.message : 'the browser gave no reason.';
