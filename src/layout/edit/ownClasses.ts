import { type BuiltInMicClassId, isBuiltInMicClass } from '../catalogue/micClasses.ts';
import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';
import { type MicClass, micClassSchema } from '../mics/micClass.ts';
import { mapShared, withPart } from './change.ts';
import { freshId } from './ids.ts';

/** A layout with one more mic class of the user's own, the last one; its id is made fresh when it is taken or built in. */
export function addOwnClass(layout: Layout, micClass: MicClass): Layout {
  if (!micClassSchema.safeParse(micClass).success) return layout;
  const stem = isBuiltInMicClass(micClass.id) ? `own-${micClass.id}` : micClass.id;
  const own = { ...micClass, id: freshId(layout, stem) };
  return withPart(layout, 'ownClasses', [...layout.ownClasses, own]);
}

export function changeOwnClass(
  layout: Layout,
  id: Id,
  patch: Partial<Omit<MicClass, 'id'>>,
): Layout {
  const ownClasses = layout.ownClasses.map((own) => (own.id === id ? { ...own, ...patch } : own));
  return withPart(layout, 'ownClasses', ownClasses);
}

/** A layout without one own class. Mics of that class take the built-in class most like it. */
export function removeOwnClass(layout: Layout, id: Id): Layout {
  const removed = layout.ownClasses.find((own) => own.id === id);
  if (!removed) return layout;
  const micClass = nearestBuiltIn(removed);
  return {
    ...layout,
    ownClasses: layout.ownClasses.filter((own) => own.id !== id),
    mics: mapShared(layout.mics, (mic) => (mic.micClass === id ? { ...mic, micClass } : mic)),
  };
}

function nearestBuiltIn({ type, address, length }: MicClass): BuiltInMicClassId {
  switch (type) {
    case 'boundary':
      return 'boundary-plate';
    case 'ribbon':
      return 'ribbon';
    case 'condenser':
      return address === 'side' ? 'side-condenser' : 'pencil-condenser';
    case 'dynamic':
      return length < 100 ? 'compact-dynamic' : 'short-dynamic';
  }
}
