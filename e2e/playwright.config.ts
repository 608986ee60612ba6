import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { landscape, launchOptions, portrait } from './support/tablet.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const port = process.env.E2E_PORT ?? '4273';

/** A test runs on the tablet in landscape; one tagged @portrait runs in portrait as well. */
export default defineConfig({
  testDir: '.',
  outputDir: '../test-results/browser',
  timeout: 150_000,
  expect: { timeout: 20_000 },
  globalTimeout: 65 * 60_000,
  retries: 0,
  forbidOnly: true,
  fullyParallel: true,
  workers: availableParallelism() > 1 ? 2 : 1,
  reporter: 'list',
  use: {
    baseURL: `http://localhost:${port}`,
    launchOptions: launchOptions(),
    screenshot: 'only-on-failure',
    trace: 'off',
  },
  projects: [
    { name: 'landscape', use: landscape },
    { name: 'portrait', use: portrait, grep: /@portrait/ },
  ],
  webServer: {
    command: `"${process.execPath}" src/app/launch/serve.mjs`,
    cwd: root,
    env: { PORT: port },
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
