import { describe, expect, test } from 'vitest';
import { makeUpdate } from '../../src/adapters/update.ts';

/** A worker that only remembers what it was told. */
class FakeWorker extends EventTarget {
  told: unknown[] = [];
  postMessage(message: unknown) {
    this.told.push(message);
  }
}

class FakeRegistration extends EventTarget {
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  asked = 0;
  update() {
    this.asked += 1;
    return Promise.reject(new Error('no network'));
  }
  /** A new worker is found, installs, and waits. */
  find(worker: FakeWorker) {
    this.installing = worker;
    this.dispatchEvent(new Event('updatefound'));
    this.installing = null;
    this.waiting = worker;
    worker.dispatchEvent(new Event('statechange'));
  }
}

class FakeWorkers extends EventTarget {
  controller: FakeWorker | null = null;
  registered: unknown[] = [];
  constructor(readonly registration: FakeRegistration | null) {
    super();
  }
  register(...args: unknown[]) {
    this.registered.push(args);
    return this.registration
      ? Promise.resolve(this.registration)
      : Promise.reject(new Error('refused'));
  }
  control(worker: FakeWorker) {
    this.controller = worker;
    this.dispatchEvent(new Event('controllerchange'));
  }
}

class FakeSight extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
}

/** An adapter on a fake page, its offers and reloads counted, after its registration settled. */
async function onPage(setUp: (workers: FakeWorkers, registration: FakeRegistration) => void) {
  const registration = new FakeRegistration();
  const workers = new FakeWorkers(registration);
  setUp(workers, registration);
  const sight = new FakeSight();
  const offers: (() => void)[] = [];
  let reloads = 0;
  const made = makeUpdate({
    workers: workers as unknown as ServiceWorkerContainer,
    sight: sight as unknown as Document,
    reload: () => (reloads += 1),
  });
  const unlisten = made.update.onOffer((take) => offers.push(take));
  await Promise.resolve();
  await Promise.resolve();
  return { ...made, registration, workers, sight, offers, unlisten, reloads: () => reloads };
}

describe('the update', () => {
  test('registers the worker at once, past the HTTP cache', async () => {
    const { workers } = await onPage(() => undefined);
    expect(workers.registered).toEqual([['/sw.js', { scope: '/', updateViaCache: 'none' }]]);
  });

  test('the first install is not an offer and does not reload', async () => {
    const { workers, registration, offers, reloads } = await onPage(() => undefined);
    const first = new FakeWorker();
    registration.find(first);
    workers.control(first);
    expect(offers).toHaveLength(0);
    expect(reloads()).toBe(0);
  });

  test('a version found later is offered, and only taking it tells the worker', async () => {
    const { workers, registration, offers, reloads } = await onPage((w) => {
      w.controller = new FakeWorker();
    });
    const next = new FakeWorker();
    registration.find(next);
    expect(offers).toHaveLength(1);
    expect(next.told).toEqual([]);

    offers[0]?.();
    offers[0]?.();
    expect(next.told).toEqual([{ type: 'SKIP_WAITING' }]);
    expect(reloads()).toBe(0);
    workers.control(next);
    expect(reloads()).toBe(1);
  });

  test('a version that already waits is offered, also to a listener that comes late', async () => {
    const { update, offers } = await onPage((w, r) => {
      w.controller = new FakeWorker();
      r.waiting = new FakeWorker();
    });
    expect(offers).toHaveLength(1);
    const late: unknown[] = [];
    update.onOffer((take) => late.push(take));
    expect(late).toHaveLength(1);
  });

  test('a version taken in another page is offered here as a reload, not forced', async () => {
    const { workers, offers, reloads } = await onPage((w) => {
      w.controller = new FakeWorker();
    });
    workers.control(new FakeWorker());
    expect(reloads()).toBe(0);
    offers[0]?.();
    expect(reloads()).toBe(1);
  });

  test('asks for a new version when the page is seen again, and bears a refusal', async () => {
    const { sight, registration } = await onPage(() => undefined);
    sight.visibilityState = 'hidden';
    sight.dispatchEvent(new Event('visibilitychange'));
    expect(registration.asked).toBe(0);
    sight.visibilityState = 'visible';
    sight.dispatchEvent(new Event('visibilitychange'));
    expect(registration.asked).toBe(1);
  });

  test('a listener that stopped, and a stopped adapter, hear nothing more', async () => {
    const one = await onPage((w) => {
      w.controller = new FakeWorker();
    });
    one.unlisten();
    one.registration.find(new FakeWorker());
    expect(one.offers).toHaveLength(0);

    const two = await onPage((w) => {
      w.controller = new FakeWorker();
    });
    two.stop();
    two.stop();
    two.registration.find(new FakeWorker());
    two.workers.control(new FakeWorker());
    expect(two.offers).toHaveLength(0);
  });

  test('without service workers, or when they refuse, nothing is offered', async () => {
    const offers: unknown[] = [];
    const sight = new FakeSight() as unknown as Document;
    makeUpdate({ workers: null, sight, reload: () => undefined }).update.onOffer((take) =>
      offers.push(take),
    );
    const refusing = new FakeWorkers(null);
    makeUpdate({
      workers: refusing as unknown as ServiceWorkerContainer,
      sight,
      reload: () => undefined,
    }).update.onOffer((take) => offers.push(take));
    await Promise.resolve();
    await Promise.resolve();
    expect(refusing.registered).toHaveLength(1);
    expect(offers).toHaveLength(0);
  });
});
