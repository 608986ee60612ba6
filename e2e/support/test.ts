import { type BrowserContext, test as base, expect, type Page } from '@playwright/test';
import { type Deployment, startDeployment } from './deployment.ts';
import { openProfile } from './profile.ts';

interface Extras {
  /** Starts a server of its own with a copy of the built app, some files changed; it ends with the test. */
  startSite(changes?: Readonly<Record<string, string>>): Promise<Deployment>;
  /** Starts a browser on the test's own profile, after closing the one before: the second call is the tablet's second start. */
  startBrowser(): Promise<BrowserContext>;
}

/**
 * Playwright's test with a page that must stay clean: no uncaught error, nothing the content policy had to stop, and no
 * request to another origin. Specs import `test` and `expect` from here.
 */
export const test = base.extend<Extras>({
  page: async ({ page, baseURL }, use) => {
    const faults = watchForFaults(page, new URL(baseURL ?? 'http://localhost').hostname);
    await use(page);
    expect(faults).toEqual([]);
  },
  startSite: async ({ baseURL }, use, info) => {
    expect(baseURL).toBeDefined();
    const sites: Deployment[] = [];
    await use(async (changes) => {
      const site = await startDeployment(info.outputPath(`site-${sites.length}`), changes);
      sites.push(site);
      return site;
    });
    for (const site of sites) site.switchOff();
  },
  startBrowser: async ({ baseURL, viewport }, use, info) => {
    let open: BrowserContext | undefined;
    await use(async () => {
      await open?.close();
      open = await openProfile(info.outputPath('profile'), { baseURL, viewport });
      return open;
    });
    await open?.close();
  },
});

/** Fills the list that it returns while the page is open. */
function watchForFaults(page: Page, ownHost: string): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`uncaught: ${error.stack ?? error.message}`));
  page.on('console', (message) => {
    if (/content security policy|trusted ?(type|html|script)/i.test(message.text())) {
      faults.push(`stopped by the content policy: ${message.text()}`);
    }
  });
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (protocol.startsWith('http') && hostname !== ownHost) faults.push(`asked ${request.url()}`);
  });
  return faults;
}

export { expect };
