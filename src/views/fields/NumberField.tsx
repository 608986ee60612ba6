import { memo } from 'react';
import { useStable } from '../parts/useStable.ts';
import type { Limits } from './reading.ts';
import { Stepper } from './Stepper.tsx';
import { type NumberEntry, useNumberEntry } from './useNumberEntry.ts';

export interface NumberFieldProps extends NumberEntry {
  readonly label: string;
  /** What the number means, said below it. */
  readonly note?: string;
}

/** A number that can be typed with its unit, or stepped with − and +. */
export function NumberField({ limits: { low, high }, apply, ...props }: NumberFieldProps) {
  return <Numbered {...props} low={low} high={high} apply={useStable(apply)} />;
}

/** Left alone while it shows the same number: in a drag most do. */
const Numbered = memo(function Numbered(props: Omit<NumberFieldProps, 'limits'> & Limits) {
  const { label, note, low, high, ...entry } = props;
  const { measure } = entry;
  return (
    <Stepper
      {...{ label, note, measure }}
      entry={useNumberEntry({ ...entry, limits: { low, high } })}
    />
  );
});
