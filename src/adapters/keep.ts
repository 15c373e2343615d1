/**
 * Asks the browser not to clear this kitchen when it needs room. True when it promises, false when
 * it does not (then a backup should be offered), `unavailable` when it cannot be asked (plain http).
 */
export async function askToKeep(
  storage: StorageManager | undefined = navigator.storage,
): Promise<boolean | 'unavailable'> {
  if (typeof storage?.persist !== 'function') return 'unavailable';
  try {
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return 'unavailable';
  }
}
