import { type BrowserContext, chromium, type ViewportSize } from '@playwright/test';
import { launchOptions } from './tablet.ts';

/** The page's address and size, as the running test has them. */
interface Screen {
  readonly baseURL: string | undefined;
  readonly viewport: ViewportSize | null;
}

/**
 * Starts a browser of its own on a profile folder, as a tablet does each time it is switched on.
 *
 * @param folder Profile folder; an empty or missing one is a fresh profile.
 */
export function openProfile(
  folder: string,
  { baseURL, viewport }: Screen,
): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, {
    ...launchOptions(),
    ...(baseURL === undefined ? {} : { baseURL }),
    viewport,
    hasTouch: true,
  });
}
