import type { Page } from 'playwright-core';

/** What is asked of one object store of the app's database; `none` where it was not made yet. */
function ask<T>(
  page: Page,
  store: string,
  what: 'getAll' | 'count',
  none: T,
  from?: number,
): Promise<T> {
  return page.evaluate(
    async ([name, method, nothing, least]) => {
      const known = await indexedDB.databases();
      if (!known.some((database) => database.name === 'loafward')) return nothing as T;
      const settled = <R>(request: IDBRequest<R>) =>
        new Promise<R>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error ?? new Error('no reason given'));
        });
      const database = await settled(indexedDB.open('loafward'));
      try {
        if (!database.objectStoreNames.contains(name)) return nothing as T;
        const range = least === undefined ? undefined : IDBKeyRange.lowerBound(least);
        const rows = database.transaction(name, 'readonly').objectStore(name);
        return (await settled(rows[method](range) as IDBRequest<unknown>)) as T;
      } finally {
        database.close();
      }
    },
    [store, what, none, from] as const,
  );
}

/** All rows of one object store, in key order, or those from one key on; none before it was made. */
export const storeRows = (page: Page, store = 'log', from?: number): Promise<unknown[]> =>
  ask<unknown[]>(page, store, 'getAll', [], from);

/** How many rows the log has: cheap, however long it is. */
export const countRows = (page: Page): Promise<number> => ask(page, 'log', 'count', 0);
