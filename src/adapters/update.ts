import type { Stop, Update } from '../../machines/ports.ts';

/** What the adapter asks of the page; the page itself by default, a fake in tests. */
export interface UpdatePage {
  /** null where there is none: plain http on a network name, or an old browser. */
  readonly workers: ServiceWorkerContainer | null;
  /** Tells when the page is looked at again. */
  readonly sight: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'>;
  reload(): void;
}

const thisPage = (): UpdatePage => ({
  workers: 'serviceWorker' in navigator ? navigator.serviceWorker : null,
  sight: document,
  reload: () => location.reload(),
});

/**
 * Registers the service worker, which keeps the whole app for use without a network, and offers
 * a newer version once it waits. Nothing is reloaded before the offer is taken. A page without
 * service workers, or whose registration fails, offers nothing and works on.
 */
export function makeUpdate(page: UpdatePage = thisPage()): { update: Update; stop: Stop } {
  const listeners = new Set<(take: () => void) => void>();
  const over = new AbortController();
  const { signal } = over;
  let offered: (() => void) | null = null;
  let taken = false;

  function offer(take: () => void) {
    if (signal.aborted) return;
    offered = () => {
      if (taken) return;
      taken = true;
      take();
    };
    for (const tell of [...listeners]) tell(offered);
  }

  function watch(workers: ServiceWorkerContainer, registration: ServiceWorkerRegistration) {
    // A worker that waits behind none is the first install: that is not an update.
    const look = () => {
      const { waiting } = registration;
      if (waiting && workers.controller) offer(() => waiting.postMessage({ type: 'SKIP_WAITING' }));
    };
    const follow = (worker: ServiceWorker | null) =>
      worker?.addEventListener('statechange', look, { signal });

    look();
    follow(registration.installing);
    registration.addEventListener('updatefound', () => follow(registration.installing), { signal });

    // A tablet may keep the page open for weeks: ask again whenever it is looked at.
    const ask = () => {
      if (page.sight.visibilityState === 'visible') registration.update().catch(() => undefined); // no network now: the next look asks again
    };
    page.sight.addEventListener('visibilitychange', ask, { signal });
  }

  function start(workers: ServiceWorkerContainer) {
    let controlled = workers.controller !== null;
    workers.addEventListener(
      'controllerchange',
      () => {
        if (taken) page.reload();
        // Taken in another page: this one runs old code beside new files. Its reload is offered too.
        else if (controlled) offer(() => page.reload());
        controlled = true;
      },
      { signal },
    );
    // Not on `load`: a listener added after a top-level await would never run.
    workers.register('/sw.js', { scope: '/', updateViaCache: 'none' }).then(
      (registration) => {
        if (!signal.aborted) watch(workers, registration);
      },
      () => undefined, // refused (private window, bad certificate): the app works with the network only
    );
  }

  if (page.workers) start(page.workers);
  return {
    update: {
      onOffer(then) {
        listeners.add(then);
        if (offered) then(offered);
        return () => void listeners.delete(then);
      },
    },
    stop: () => over.abort(),
  };
}
