import type { Plugin } from 'vite';

/** Appended to files in a build for the bench only. */
const appended: Readonly<Record<string, string>> = {
  // The page's session is handed over to the bench that waits for it in the page.
  '/src/session/session.ts': 'if (globalThis.bench) globalThis.bench.session = session;',
  // When a drawing was painted: the page may hear of it much later.
  '/src/app/paintWorker.ts': `const tell = self.postMessage.bind(self);
self.postMessage = (message, given) =>
  tell({ ...message, at: performance.timeOrigin + performance.now() }, given);`,
};

export const exposeSession: Plugin = {
  name: 'expose-session',
  transform(code, id) {
    const path = Object.keys(appended).find((end) => id.split('?')[0]?.endsWith(end));
    return path === undefined ? null : `${code}\n${appended[path]}\n`;
  },
};
