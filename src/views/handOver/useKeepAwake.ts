import { useEffect } from 'react';

/** Keeps the screen on while `wanted`, where the browser can; elsewhere the tablet's own setting holds. */
export function useKeepAwake(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | null = null;
    let isOver = false;
    const release = () => void lock?.release().catch(() => undefined);
    navigator.wakeLock.request('screen').then(
      (got) => {
        lock = got;
        if (isOver) release();
      },
      // Refused to save power: the codes are shown all the same.
      () => undefined,
    );
    return () => {
      isOver = true;
      release();
    };
  }, [wanted]);
}
