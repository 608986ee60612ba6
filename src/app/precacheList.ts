/** Every file of one version of the app, as the service worker keeps it. */
export interface Precache {
  /** Hash over all files; names the cache. */
  readonly version: string;
  readonly files: readonly {
    /** Path from the top of the site, percent-encoded. */
    readonly address: string;
    /** Subresource integrity of the exact bytes, so that no file of another version slips in. */
    readonly integrity: string;
  }[];
}

const prefix = 'strokespace-';

/** Name of the cache that holds one version; also of the lock that a page of this version holds while it is open. */
export const versionName = (version: string): string => `${prefix}${version}`;

/** Whether a cache or a lock is one of ours. */
export const isVersionName = (name: string): boolean => name.startsWith(prefix);
