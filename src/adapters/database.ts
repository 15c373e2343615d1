import { StoreError, type Stop, type StoreTrouble } from '../../machines/ports.ts';

/**
 * Object stores: rows of the log by seq, settings by name; in a database of their own each, pictures by
 * formula, the circle's rows by key, what is said and kept of bakes, rows of other tablets' logs, and
 * voices that are known by their ids.
 */
export type StoreName =
  'log' | 'settings' | 'pictures' | 'circle' | 'said' | 'kept' | 'others' | 'voices';

const KITCHEN: readonly StoreName[] = ['log', 'settings'];

/**
 * What a transaction is to do. It makes all its requests before it returns, then says how its
 * answer is read once everything is on the disk. `refuse` gives the whole transaction up.
 */
export type Work<T> = (
  store: IDBObjectStore,
  refuse: (trouble: StoreTrouble) => void,
) => () => T | PromiseLike<T>;

/** One connection to a kitchen's IndexedDB, opened when first needed and again when lost. */
export interface Database {
  /**
   * Runs `work` in one strictly durable transaction: all of it or nothing. Rejects with StoreError. Of several
   * stores it is handed the first, whose transaction has the others.
   */
  run<T>(
    stores: StoreName | readonly [StoreName, ...StoreName[]],
    mode: IDBTransactionMode,
    work: Work<T>,
  ): Promise<T>;
  readonly close: Stop;
}

const VERSION = 1;
/** An open can wait for ever behind another page's unfinished deletion or upgrade, ms. */
const OPEN_WITHIN = 5_000;

/** @param stores made when the database is */
export function makeDatabase(name: string, stores = KITCHEN): Database {
  let current: Promise<IDBDatabase> | null = null;

  const forget = (which: Promise<IDBDatabase> | null) => {
    if (current === which) current = null;
  };
  const connection = () => {
    if (current !== null) return current;
    const fresh = open(name, stores, () => forget(fresh));
    fresh.catch(() => forget(fresh));
    current = fresh;
    return fresh;
  };
  const begin = async (over: StoreName | readonly StoreName[], mode: IDBTransactionMode) => {
    const store = over as string | string[];
    const used = connection();
    const options = { durability: 'strict' } as const;
    try {
      return (await used).transaction(store, mode, options);
    } catch (cause) {
      if (!(cause instanceof Error || cause instanceof DOMException)) throw cause;
      if (cause.name !== 'InvalidStateError') throw cause;
      // The browser closed it under us (storage cleared, another version, memory): once more.
      forget(used);
      return (await connection()).transaction(store, mode, options);
    }
  };

  return {
    async run(stores, mode, work) {
      let tx: IDBTransaction;
      try {
        tx = await begin(stores, mode);
      } catch (cause) {
        throw cause instanceof StoreError ? cause : new StoreError('closed', { cause });
      }
      return settled(tx, typeof stores === 'string' ? stores : stores[0], work);
    },
    close() {
      const used = current;
      current = null;
      used?.then(
        (db) => db.close(),
        () => {}, // it never opened, and whoever asked was told
      );
    },
  };
}

function open(name: string, stores: readonly StoreName[], lost: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    let late = false;
    const giveUp = (cause: unknown) => {
      late = true;
      clearTimeout(timer);
      reject(new StoreError('closed', { cause }));
    };
    const timer = setTimeout(() => giveUp(new Error(`open: ${name} did not answer.`)), OPEN_WITHIN);
    try {
      const request = indexedDB.open(name, VERSION);
      request.onupgradeneeded = () => {
        for (const store of stores) request.result.createObjectStore(store);
      };
      request.onerror = () => giveUp(request.error);
      request.onsuccess = () => {
        const db = request.result;
        if (late) return db.close();
        clearTimeout(timer);
        db.onclose = lost;
        // Another page wants to delete or upgrade it: stand aside, and ask again when next needed.
        db.onversionchange = () => {
          db.close();
          lost();
        };
        resolve(db);
      };
    } catch (cause) {
      giveUp(cause); // no IndexedDB here, or the browser forbids it
    }
  });
}

/** Waits for the whole transaction: a request that succeeded is not yet on the disk. */
function settled<T>(tx: IDBTransaction, store: StoreName, work: Work<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    let refused: StoreTrouble | null = null;
    let first: DOMException | null = null;
    let read: (() => T | PromiseLike<T>) | null = null;
    const fail = (cause: unknown) =>
      reject(new StoreError(refused ?? troubleOf(cause), { cause: cause ?? undefined }));

    // Listeners, not on… properties: idb-keyval sets those on the same transaction.
    tx.addEventListener('error', (event) => {
      // tx.error is null here, and may stay so: the request that failed first knows why. Those
      // still waiting when the transaction was given up only say AbortError.
      const { error } = event.target as IDBRequest;
      if (error?.name !== 'AbortError') first ??= error;
    });
    tx.addEventListener('abort', () => fail(first ?? tx.error));
    tx.addEventListener('complete', () => {
      if (read !== null) resolve(read());
    });
    try {
      read = work(tx.objectStore(store), (trouble) => {
        refused ??= trouble;
        tx.abort();
      });
    } catch (cause) {
      // A row that cannot be stored, for one. Nothing of the rest may stay; a transaction that has
      // ended already stays as it is.
      fail(cause);
      try {
        tx.abort();
      } catch {
        return;
      }
    }
  });
}

function troubleOf(cause: unknown): StoreTrouble {
  const name = (cause as { name?: unknown } | null)?.name;
  if (name === 'ConstraintError') return 'taken';
  if (name === 'QuotaExceededError') return 'full';
  return 'closed';
}
