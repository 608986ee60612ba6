interface ScriptPolicy {
  createScriptURL(address: string): unknown;
}

interface PolicyMaker {
  createPolicy(
    name: string,
    rules: {
      createScriptURL?(address: string): string;
      createHTML?(markup: string): string | null;
    },
  ): ScriptPolicy;
}

/** Scripts of the app itself: what the build puts under /assets/, and the service worker. */
function ownScript(address: string): string {
  const { origin, pathname } = new URL(address, location.href);
  const known = pathname === '/serviceWorker.js' || pathname.startsWith('/assets/');
  if (origin !== location.origin || !known) {
    throw new TypeError(`expected a script of this app, found ${address}`);
  }
  return address;
}

const maker = 'trustedTypes' in window ? (window.trustedTypes as PolicyMaker) : undefined;
const policy = maker?.createPolicy('strokespace', { createScriptURL: ownScript });

// Konva empties its container with `innerHTML = ''`. Nothing but the empty text passes, so no markup comes from text.
maker?.createPolicy('default', { createHTML: (markup) => (markup === '' ? '' : null) });

/**
 * The address of a worker in the form that the content policy lets through; the plain address in browsers without Trusted
 * Types. No other policy lets an address pass, so no other code can start a script from a string.
 *
 * Worker addresses come from `import address from './some.ts?worker&url'`.
 *
 * @throws {TypeError} When the address is not one of the app's own scripts.
 */
export function trustedScript(address: string): string {
  // The DOM's types know only text and URL here; the browser takes the trusted value and nothing else.
  return (policy?.createScriptURL(address) ?? ownScript(address)) as string;
}
