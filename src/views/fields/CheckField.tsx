import { memo } from 'react';
import { useStable } from '../parts/useStable.ts';

interface CheckFieldProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onSet: (checked: boolean) => void;
}

/** Yes or no. */
export function CheckField({ label, checked, onSet }: CheckFieldProps) {
  return <Check label={label} checked={checked} onSet={useStable(onSet)} />;
}

const Check = memo(function Check({ label, checked, onSet }: CheckFieldProps) {
  return (
    <label className="check">
      <input type="checkbox" checked={checked} onChange={(event) => onSet(event.target.checked)} />
      {label}
    </label>
  );
});
