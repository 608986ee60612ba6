import { Stepper } from './Stepper.tsx';
import { type NumberEntry, useNumberEntry } from './useNumberEntry.ts';

export interface NumberFieldProps extends NumberEntry {
  readonly label: string;
  /** What the number means, said below it. */
  readonly note?: string;
}

/** A number that can be typed with its unit, or stepped with − and +. */
export function NumberField({ label, note, ...entry }: NumberFieldProps) {
  return (
    <Stepper label={label} note={note} measure={entry.measure} entry={useNumberEntry(entry)} />
  );
}
