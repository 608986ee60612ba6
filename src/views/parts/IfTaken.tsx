import { useOfferedOver } from './useOfferedOver.ts';

/** Over figures of what is only offered: that they are not so yet. Nothing while none is. */
export function IfTaken() {
  return useOfferedOver() && <p className="if-taken">If you take it</p>;
}
