import { afterAll, vi } from 'vitest';

// A page that came in the last moment of a test may still be on its way: its chunks are waited for,
// or they would arrive in an environment that is gone.
afterAll(() => vi.dynamicImportSettled());
