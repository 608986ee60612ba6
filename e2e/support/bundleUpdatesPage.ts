import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** The code of `updatesPage.ts` as one script. */
export async function bundleUpdatesPage(): Promise<string> {
  const result = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    build: {
      write: false,
      target: 'esnext',
      rolldownOptions: { input: fileURLToPath(new URL('./updatesPage.ts', import.meta.url)) },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  const chunk = first !== undefined && 'output' in first ? first.output[0] : undefined;
  if (chunk?.type !== 'chunk') throw new Error('updatesPage.ts did not compile to one script');
  return chunk.code;
}
