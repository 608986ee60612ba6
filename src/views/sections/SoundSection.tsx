import { lazy, Suspense } from 'react';

/** Charts and acoustics come only when the section is opened. */
const SoundScreen = lazy(async () => ({
  default: (await import('../sound/SoundScreen.tsx')).SoundScreen,
}));

/** What the mics hear. */
export function SoundSection() {
  return (
    <Suspense fallback={<p role="status">Listening…</p>}>
      <SoundScreen />
    </Suspense>
  );
}
