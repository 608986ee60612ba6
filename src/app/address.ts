import { type Id, idField } from '../layout/fields.ts';

/** Addresses of the app's screens: `/` is the list of layouts, `/layout/ID` an open one. */
export const LIST_ADDRESS = '/';

export const layoutAddress = (id: Id): string => `/layout/${id}`;

/** The layout that an address opens; null for the list, and for anything that is no address of ours. */
export function layoutAt(path: string): Id | null {
  const [, room, id, ...rest] = path.split('/');
  if (room !== 'layout' || rest.some((part) => part !== '')) return null;
  const read = idField.safeParse(id);
  return read.success ? read.data : null;
}
