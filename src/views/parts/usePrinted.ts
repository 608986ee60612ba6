import { useEffect, useState } from 'react';

/** What is on paper now, and how to put something there: it prints once it is drawn, and is gone when that is done. */
export function usePrinted<Sheet>(): readonly [
  printed: Sheet | null,
  print: (sheet: Sheet) => void,
] {
  const [printed, setPrinted] = useState<Sheet | null>(null);
  useEffect(() => {
    if (printed === null) return;
    const done = () => setPrinted(null);
    addEventListener('afterprint', done, { once: true });
    print();
    return () => removeEventListener('afterprint', done);
  }, [printed]);
  return [printed, (sheet) => setPrinted(sheet)];
}
