import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { stampFolder } from './precache.ts';
import { pagePolicy } from './securityHeaders.mjs';

const source = fileURLToPath(new URL('../serviceWorker.ts', import.meta.url));

/**
 * After a build: puts the content policy and the version into the page, and writes the service worker that keeps every
 * built file, those of `public/` included.
 */
export function precachePlugin(): Plugin {
  return {
    name: 'strokespace-precache',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
        injectTo: 'head-prepend',
      },
      { tag: 'meta', attrs: { name: 'version', content: '' }, injectTo: 'head' },
    ],
    writeBundle: {
      order: 'post',
      sequential: true,
      async handler({ dir }) {
        if (dir === undefined) throw new Error('the build must name its output folder');
        stampFolder(dir, await compileWorker());
      },
    },
  };
}

async function compileWorker(): Promise<string> {
  const { build } = await import('vite');
  const result = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    build: {
      write: false,
      modulePreload: false,
      rolldownOptions: { input: source, output: { format: 'iife' } },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  const chunk = first !== undefined && 'output' in first ? first.output[0] : undefined;
  if (chunk?.type !== 'chunk') throw new Error('the service worker did not compile to one script');
  return chunk.code;
}
