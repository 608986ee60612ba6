import { type Id, idField } from '../layout/fields.ts';
import { isPageName, type PageName } from '../session/pages.ts';

/** What an address shows: an open layout, by its plan (`page` null) or one of its pages. */
export interface Place {
  readonly layout: Id;
  readonly page: PageName | null;
}

/** Addresses of the app's screens: `/` is the list of layouts, `/layout/ID` an open one, `/layout/ID/PAGE` a page of it. */
export const LIST_ADDRESS = '/';

export const placeAddress = ({ layout, page }: Place): string =>
  page === null ? `/layout/${layout}` : `/layout/${layout}/${page}`;

/** The place that an address shows; null for the list, and for anything that is no address of ours. */
export function placeAt(path: string): Place | null {
  const [, room, id, page = '', ...rest] = path.split('/');
  if (room !== 'layout' || rest.some((part) => part !== '')) return null;
  const read = idField.safeParse(id);
  if (!read.success) return null;
  if (page === '') return { layout: read.data, page: null };
  return isPageName(page) ? { layout: read.data, page } : null;
}
