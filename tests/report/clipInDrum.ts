import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { ClipMount } from '../../src/layout/mics/mount.ts';

/** A layout's first clip lowered into its own drum, where nothing that moves comes near it. */
export function clipInDrum(layout: Layout): {
  readonly layout: Layout;
  readonly mic: Mic;
  readonly drum: string;
} {
  const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
  if (clip?.mount.kind !== 'clip') throw new Error('expected a clip');
  const mount: ClipMount = { ...clip.mount, height: 5, pitch: 20, reach: 40 };
  const mic: Mic = { ...clip, mount };
  return {
    layout: { ...layout, mics: layout.mics.map((each) => (each === clip ? mic : each)) },
    mic,
    drum: mount.drum,
  };
}
