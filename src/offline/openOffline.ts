export interface OfflineState {
  /** The whole program is on this device: it runs without a network. */
  readonly isReady: boolean;
  /** A newer version is on this device and waits to be opened. */
  readonly hasUpdate: boolean;
}

/** The copy of the program on this device, as the page sees it. */
export interface Offline {
  state(): OfflineState;
  /** @returns Ends the subscription. */
  subscribe(listener: () => void): () => void;
  /** Opens the newer version in place of this page; whatever is not kept is lost, so only when the person asks. */
  update(): void;
}

/** How often a page that is looked at again asks for a newer version, ms. */
const ASK_AGAIN_MS = 3_600_000;
const WORKER = './serviceWorker.js';

/**
 * Has the program copied to this device and watches for newer versions, which wait until they are asked for.
 *
 * Where the browser knows no service workers, where the page did not come over a safe connection, and on the
 * development server, nothing happens.
 *
 * @param letGo - Ends what this page still runs, before a newer version takes its place: browsers wait for the files
 *   that a busy worker is still loading.
 */
export function openOffline(letGo: () => void = () => {}): Offline {
  let state: OfflineState = { isReady: false, hasUpdate: false };
  const listeners = new Set<() => void>();
  const workers: ServiceWorkerContainer | undefined = navigator.serviceWorker;
  let registration: ServiceWorkerRegistration | undefined;

  const say = (change: Partial<OfflineState>) => {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  };
  /** True when this page runs what the copy holds; a page without a copy cannot be older than it. */
  const isControlled = () => Boolean(workers?.controller);
  const look = () => {
    if (registration?.active) say({ isReady: true });
    if (registration?.waiting && isControlled()) say({ hasUpdate: true });
  };
  const follow = (found: ServiceWorkerRegistration) => {
    registration = found;
    look();
    const watch = (worker: ServiceWorker | null) => worker?.addEventListener('statechange', look);
    watch(found.installing);
    found.addEventListener('updatefound', () => watch(found.installing));
    askAgain(found);
  };
  if (workers && import.meta.env.PROD)
    whenLoaded(() => workers.register(WORKER, { updateViaCache: 'none' }).then(follow, () => {}));
  // Another window had the new version opened: this page is the older one now.
  if (workers?.controller) workers.addEventListener('controllerchange', () => say({ hasUpdate: true }));

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    update() {
      letGo();
      const waiting = registration?.waiting;
      if (!waiting) return location.reload();
      workers?.addEventListener('controllerchange', () => location.reload(), { once: true });
      waiting.postMessage('take over');
    },
  };
}

/** The first photo comes before the copy. */
function whenLoaded(start: () => void): void {
  if (document.readyState === 'complete') start();
  else window.addEventListener('load', start, { once: true });
}

function askAgain(registration: ServiceWorkerRegistration): void {
  let asked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - asked < ASK_AGAIN_MS) return;
    asked = Date.now();
    registration.update().catch(() => {});
  });
}
