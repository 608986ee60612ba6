import { useCallback, useEffect, useRef, useState } from 'react';
import type { CodeReader, Picture, Reading } from '../../session/handOver.ts';
import { useHandOver } from './HandOverContext.ts';

export interface Codes {
  readonly reading: Reading | null;
  look(picture: Picture): Promise<void>;
  /** Forgets what was read. */
  startOver(): void;
}

/** Reads codes off pictures until all of one layout are there; then `onText` gets its text, once. */
export function useCodeReader(onText: (text: string) => void): Codes {
  const handOver = useHandOver();
  const reader = useRef<CodeReader | null>(null);
  const tell = useRef(onText);
  const [reading, setReading] = useState<Reading | null>(null);
  const isDone = useRef(false);
  useEffect(() => {
    tell.current = onText;
  }, [onText]);
  const look = useCallback(
    async (picture: Picture) => {
      reader.current ??= handOver.startReading();
      const used = reader.current;
      const next = await used.look(picture);
      if (used !== reader.current || isDone.current) return;
      // A picture with nothing on it, as most are, says nothing new.
      setReading((before) =>
        next.seen === 'nothing' || next.seen === 'again' ? (before ?? next) : next,
      );
      if (next.text === null) return;
      isDone.current = true;
      tell.current(next.text);
    },
    [handOver],
  );
  const startOver = useCallback(() => {
    reader.current = null;
    isDone.current = false;
    setReading(null);
  }, []);
  return { reading, look, startOver };
}
