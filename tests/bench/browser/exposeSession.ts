import type { Plugin } from 'vite';

/** Hands the page's session over to the bench that waits for it in the page, in a build for the bench only. */
export const exposeSession: Plugin = {
  name: 'expose-session',
  transform: (code, id) =>
    id.endsWith('/src/session/session.ts')
      ? `${code}\nif (globalThis.bench) globalThis.bench.session = session;\n`
      : null,
};
