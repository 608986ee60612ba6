import type { LaunchOptions } from '@playwright/test';

/** A tablet on the stage: touch, and no pointer that hovers. */
export const landscape = { viewport: { width: 1180, height: 820 }, hasTouch: true };
export const portrait = { viewport: { width: 820, height: 1180 }, hasTouch: true };

/** How Chromium is started; CHROMIUM_PATH names it where it is not in its usual place. */
export const launchOptions = (): LaunchOptions => ({
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
