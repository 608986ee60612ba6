import { isVersionName, type Precache, versionName } from './precacheList.ts';

declare const self: ServiceWorkerGlobalScope & { readonly PRECACHE: Precache };

const { version, files } = self.PRECACHE;
const ownCache = versionName(version);

/**
 * Rules, quoted by the tests:
 * O1 A version is installed whole or not at all, and only with the very bytes it was built with.
 * O2 A new version never takes over by itself; it waits until all pages are closed or the user agrees.
 * O3 The files of an old version stay while a page of that version is open.
 * O4 Every screen's address is answered with the page, from the cache.
 */
self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
self.addEventListener('message', (event) => {
  if (event.data === 'activate') event.waitUntil(self.skipWaiting());
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
  if (request.mode === 'navigate') event.waitUntil(removeUnusedCaches());
});

/** O1. An integrity mismatch fails the fetch, and a failed install leaves no half-filled cache behind. */
async function install(): Promise<void> {
  const cache = await caches.open(ownCache);
  try {
    await Promise.all(files.map(({ address, integrity }) => keep(cache, address, integrity)));
    const kept = await (await caches.open(ownCache)).keys();
    if (kept.length !== files.length)
      throw new Error(`expected ${files.length} files, kept ${kept.length}`);
  } catch (error) {
    await caches.delete(ownCache);
    throw error;
  }
}

async function keep(cache: Cache, address: string, integrity: string): Promise<void> {
  const response = await fetch(new Request(address, { cache: 'reload', integrity }));
  if (!response.ok || response.redirected) {
    throw new Error(`${address}: expected the file itself, found status ${response.status}`);
  }
  await cache.put(address, response);
}

/** Pages opened before the first install are served from the cache from now on as well. */
async function activate(): Promise<void> {
  await removeUnusedCaches();
  await self.clients.claim();
}

/**
 * O3. An open page holds a lock with its version's name; a cache whose lock nobody holds is of no more use. While a newer
 * version is being installed or waits, its cache has no page yet, so nothing is removed.
 */
async function removeUnusedCaches(): Promise<void> {
  const { held = [] } = await self.navigator.locks.query();
  const inUse = new Set(held.map((lock) => lock.name));
  const names = await caches.keys();
  if (self.registration.installing !== null || self.registration.waiting !== null) return;
  const unused = names.filter(
    (name) => isVersionName(name) && name !== ownCache && !inUse.has(name),
  );
  await Promise.all(unused.map((name) => caches.delete(name)));
}

/** O3, O4. What no version holds is asked of the network. */
async function answer(request: Request): Promise<Response> {
  const own = { cacheName: ownCache };
  const exact = await caches.match(request, own);
  if (exact !== undefined) return exact;
  const other =
    request.mode === 'navigate' ? await caches.match('/', own) : await caches.match(request);
  return other ?? fetch(request);
}
