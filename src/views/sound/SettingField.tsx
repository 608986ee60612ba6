import { type KeyboardEvent, useRef, useState } from 'react';
import type { Measure } from '../fields/measure.ts';
import { type Limits, readField, roundedWords, stepped } from '../fields/reading.ts';
import { Stepper, type StepperEntry } from '../fields/Stepper.tsx';

interface SettingFieldProps {
  readonly label: string;
  readonly value: number;
  readonly measure: Measure;
  readonly limits: Limits;
  readonly onSet: (value: number) => void;
}

/** A number that is kept on the machine and not in the layout, so that it has no undo. */
export function SettingField({ label, ...setting }: SettingFieldProps) {
  return <Stepper label={label} measure={setting.measure} entry={useSettingEntry(setting)} />;
}

function useSettingEntry({
  value,
  measure,
  limits,
  onSet,
}: Omit<SettingFieldProps, 'label'>): StepperEntry {
  const shown = measure.show(value, 'mm');
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const [rounded, setRounded] = useState('');
  const held = useRef(value);
  const step = (from: number, count: number) =>
    onSet(stepped(from, count * measure.step('mm'), limits));
  const take = () => {
    setDraft(null);
    setProblem('');
    setRounded('');
    if (draft === null || draft === shown) return;
    const reading = readField(draft, measure, limits, 'mm');
    if (reading.ok) {
      onSet(reading.value);
      setRounded(roundedWords(reading));
    } else setProblem(`${reading.message} Kept ${shown}.`);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') setDraft(null);
    const steps = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (draft !== null || steps === undefined) return;
    event.preventDefault();
    step(value, steps);
  };
  const holding = (sign: 1 | -1) => ({
    start: () => {
      held.current = value;
    },
    step: (count: number) => step(held.current, sign * count),
    end: () => undefined,
    cancel: () => onSet(held.current),
  });
  return { unit: 'mm', shown, draft, problem, rounded, setDraft, take, onKeyDown, holding };
}
