/**
 * The part of Web Locks that pages of one browser share, as the standard tells it: one holder a name,
 * a queue behind it, `ifAvailable` that never waits (nor jumps the queue), `signal` that leaves it.
 */
export function makeTurnedLocks(): LockManager {
  type Turn = {
    readonly callback: LockGrantedCallback<unknown>;
    readonly done: (out: unknown) => void;
  };
  const queues = new Map<string, Turn[]>();

  const grant = (name: string) => {
    const turn = queues.get(name)?.[0];
    if (turn === undefined) return;
    const lock = { name, mode: 'exclusive' } as Lock;
    void Promise.resolve(turn.callback(lock)).then((out) => {
      queues.get(name)?.shift();
      turn.done(out);
      grant(name);
    });
  };

  const request = (
    name: string,
    options: LockOptions,
    callback: LockGrantedCallback<unknown>,
  ): Promise<unknown> => {
    const queue = queues.get(name) ?? [];
    queues.set(name, queue);
    if (options.ifAvailable && queue.length > 0) {
      return Promise.resolve().then(() => callback(null));
    }
    return new Promise((done, reject) => {
      const turn = { callback, done };
      queue.push(turn);
      options.signal?.addEventListener('abort', () => {
        if (queue.indexOf(turn) <= 0) return; // granted already: a signal is then ignored
        queue.splice(queue.indexOf(turn), 1);
        reject(new DOMException('', 'AbortError'));
      });
      if (queue.length === 1) queueMicrotask(() => grant(name));
    });
  };
  return { request, query: () => Promise.resolve({}) } as unknown as LockManager;
}
