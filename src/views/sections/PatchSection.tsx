import { lazy, Suspense } from 'react';

/** The patch comes only when the section is opened. */
const PatchScreen = lazy(async () => ({
  default: (await import('../patch/PatchScreen.tsx')).PatchScreen,
}));

/** Input list, splits, line check and pull list. */
export function PatchSection() {
  return (
    <Suspense fallback={<p role="status">Reading the patch…</p>}>
      <PatchScreen />
    </Suspense>
  );
}
