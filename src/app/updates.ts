import { versionName } from './precacheList.ts';
import { trustedScript } from './trustedScript.ts';

/**
 * Whether the app will start without a network: `ready`; `insecure` over plain http from another machine; `unsupported`
 * by the browser; `failed` when the files could not all be kept, in which case the next start tries again.
 */
export type OfflineState = 'ready' | 'insecure' | 'unsupported' | 'failed';

const patienceMs = 10_000;

/**
 * Keeps the app for use without a network, and watches for a newer version.
 *
 * A newer version never takes over by itself. `onWaiting` is called each time one is there, with a function that puts it to
 * use and loads the page again: save first, then call it. It rejects when the newer version doesn't take over in 10 s, and
 * then the page goes on as it was.
 *
 * @returns Once it is known whether the app will start offline.
 */
export async function watchForUpdate(
  onWaiting: (apply: () => Promise<void>) => void,
): Promise<OfflineState> {
  if (!window.isSecureContext) return 'insecure';
  if (!('serviceWorker' in navigator)) return 'unsupported';
  holdVersion();
  const container = navigator.serviceWorker;
  let applied = false;
  let controlled = container.controller !== null;
  try {
    const registration = await container.register(trustedScript('/serviceWorker.js'), {
      updateViaCache: 'none',
    });
    const offer = () =>
      onWaiting(async () => {
        applied = true;
        await activateWaiting(registration).catch((error: unknown) => {
          applied = false;
          throw error;
        });
        location.reload();
      });
    container.addEventListener('controllerchange', () => {
      // The first install takes this page in; any later change was agreed to in another tab.
      if (controlled && !applied) offer();
      controlled = true;
    });
    if (registration.waiting !== null) offer();
    onNewVersion(registration, offer);
    checkWhenShown(registration);
    return await firstInstall(registration);
  } catch {
    return 'failed';
  }
}

/** The version of the app that this page is of, as the build wrote it. */
export const versionHere = (): string =>
  document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? '';

/** The service worker keeps this version's files for as long as any page holds this lock. */
function holdVersion(): void {
  const untilClosed = new Promise<void>(() => {});
  navigator.locks
    .request(versionName(versionHere()), { mode: 'shared' }, () => untilClosed)
    .catch(() => {
      // The browser refuses locks only while the page goes away.
    });
}

function onNewVersion(registration: ServiceWorkerRegistration, offer: () => void): void {
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && registration.active !== null) offer();
    });
  });
}

/** A tablet may keep the app open for days, so it asks again whenever it is looked at. */
function checkWhenShown(registration: ServiceWorkerRegistration): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible') return;
    registration.update().catch(() => {
      // No network: the next look asks again.
    });
  });
}

function firstInstall(registration: ServiceWorkerRegistration): Promise<OfflineState> {
  const worker = registration.installing;
  if (registration.active !== null || worker === null) {
    return Promise.resolve(registration.active === null ? 'failed' : 'ready');
  }
  return new Promise((done) => {
    worker.addEventListener('statechange', () => {
      if (worker.state === 'activated') done('ready');
      if (worker.state === 'redundant') done('failed');
    });
  });
}

function activateWaiting(registration: ServiceWorkerRegistration): Promise<void> {
  const { waiting } = registration;
  if (waiting === null) return Promise.resolve();
  return new Promise((done, fail) => {
    const timer = setTimeout(
      () => fail(new Error('The newer version did not take over in 10 seconds.')),
      patienceMs,
    );
    waiting.addEventListener('statechange', () => {
      if (waiting.state !== 'activated') return;
      clearTimeout(timer);
      done();
    });
    waiting.postMessage('activate');
  });
}
