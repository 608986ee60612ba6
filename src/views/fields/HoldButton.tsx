import { memo } from 'react';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { type Hold, type HoldHandlers, useHold } from './useHold.ts';

interface HoldButtonProps {
  readonly label: string;
  readonly icon: IconName;
  readonly hold: Hold;
}

/** A button that acts once when tapped and goes on while it is held. */
export function HoldButton({ label, icon, hold }: HoldButtonProps) {
  return <Held label={label} icon={icon} handlers={useHold(hold)} />;
}

interface HeldProps {
  readonly label: string;
  readonly icon: IconName;
  readonly handlers: HoldHandlers;
}

const Held = memo(function Held({ label, icon, handlers }: HeldProps) {
  return (
    <button type="button" className="hold" aria-label={label} {...handlers}>
      <Icon name={icon} />
    </button>
  );
});
