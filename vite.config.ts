import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { precachePlugin } from './src/app/launch/precachePlugin.ts';

export default defineConfig({
  plugins: [react(), precachePlugin()],
  build: {
    // The content policy allows no data: address but for pictures, so every asset stays a file.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The budget is 300 kB of gzipped JavaScript at the start, which the bench prints; Vite's limit is about raw size.
    chunkSizeWarningLimit: 1000,
  },
  worker: { format: 'es' },
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/seed.ts'],
    environment: 'node',
    // One to a core, as the browser tests: one fewer would leave a core of two idle.
    maxWorkers: '100%',
    // Generous, because a property test may share two cores with a browser; no test judges by time.
    testTimeout: 240_000,
    hookTimeout: 240_000,
  },
});
