import { useClearing } from '../../session/clearing.ts';
import { useOfferedOver } from './useOfferedOver.ts';

/** Over figures of what is only offered: that they are not so yet. Nothing while none is. */
export function IfTaken() {
  const clearing = useClearing();
  const isOffered = useOfferedOver() !== null;
  const several = clearing?.kind === 'offered' && clearing.moved.length > 1;
  return (
    isOffered && <p className="if-taken">{several ? 'If you take them all' : 'If you take it'}</p>
  );
}
