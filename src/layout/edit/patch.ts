import type { Layout } from '../layout.ts';
import type { PatchSettings } from '../patch.ts';
import { checkReferences } from '../references.ts';
import { withPart } from './change.ts';

/** A layout with its patch changed and fitted to its limits. Without effect: a change that breaks rule L1 or L7. */
export function changePatch(
  layout: Layout,
  change: (patch: PatchSettings) => PatchSettings,
): Layout {
  const after = withPart(layout, 'patch', change(layout.patch));
  return after === layout || checkReferences(after).length === 0 ? after : layout;
}

/** A layout without the channels of mics that it does not have. */
export function withoutLostChannels(layout: Layout): Layout {
  const known = new Set(layout.mics.map(({ id }) => id));
  const channels = layout.patch.channels.filter(({ mic }) => known.has(mic));
  return channels.length === layout.patch.channels.length
    ? layout
    : { ...layout, patch: { ...layout.patch, channels } };
}
