import { lazy, Suspense } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { OpenLayout } from '../../session/session.ts';

/** Acoustics come only when a spot is on offer. */
const CostInSound = lazy(async () => ({
  default: (await import('../sound/CostInSound.tsx')).CostInSound,
}));

interface SoundOfSpotProps {
  readonly mic: Id;
  /** The layout without the offer. */
  readonly before: OpenLayout;
}

/** What an offered spot costs in sound. */
export function SoundOfSpot({ mic, before }: SoundOfSpotProps) {
  return (
    <Suspense fallback="What it costs in sound…">
      <CostInSound mic={mic} before={before} />
    </Suspense>
  );
}
