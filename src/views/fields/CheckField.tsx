interface CheckFieldProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onSet: (checked: boolean) => void;
}

/** Yes or no. */
export function CheckField({ label, checked, onSet }: CheckFieldProps) {
  return (
    <label className="check">
      <input type="checkbox" checked={checked} onChange={(event) => onSet(event.target.checked)} />
      {label}
    </label>
  );
}
