import { afterAll, vi } from 'vitest';
import { loadedLater } from '../fakes/loaded-later.ts';

// A house that a test has opened fetches on after the test's last line: it is not left to a world that is gone.
afterAll(async () => {
  await loadedLater();
  await vi.dynamicImportSettled();
}, 60_000);
