import { Stepper } from './Stepper.tsx';
import { type NumberEntry, useNumberEntry } from './useNumberEntry.ts';

export interface NumberFieldProps extends NumberEntry {
  readonly label: string;
}

/** A number that can be typed with its unit, or stepped with − and +. */
export function NumberField({ label, ...entry }: NumberFieldProps) {
  return <Stepper label={label} measure={entry.measure} entry={useNumberEntry(entry)} />;
}
