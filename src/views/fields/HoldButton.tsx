import { Icon, type IconName } from '../parts/Icon.tsx';
import { type Hold, useHold } from './useHold.ts';

interface HoldButtonProps {
  readonly label: string;
  readonly icon: IconName;
  readonly hold: Hold;
}

/** A button that acts once when tapped and goes on while it is held. */
export function HoldButton({ label, icon, hold }: HoldButtonProps) {
  return (
    <button type="button" className="hold" aria-label={label} {...useHold(hold)}>
      <Icon name={icon} />
    </button>
  );
}
