import type { Page } from 'playwright-core';

/** All rows of one object store of the app's database, in key order; none before it was made. */
export function storeRows(page: Page, store = 'log'): Promise<unknown[]> {
  return page.evaluate(async (name) => {
    const known = await indexedDB.databases();
    if (!known.some((database) => database.name === 'loafward')) return [];
    const settled = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error ?? new Error('no reason given'));
      });
    const database = await settled(indexedDB.open('loafward'));
    try {
      if (!database.objectStoreNames.contains(name)) return [];
      const rows: unknown[] = await settled(
        database.transaction(name, 'readonly').objectStore(name).getAll(),
      );
      return rows;
    } finally {
      database.close();
    }
  }, store);
}
