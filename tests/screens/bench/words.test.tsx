import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

it('says a caution that a question repeats once', async () => {
  await atBench('levain.look');
  await screen.findByRole('heading', { name: /^What colour/ }, { timeout: 10_000 });
  expect(screen.getAllByText(/^Pink, orange or mould/)).toHaveLength(1);
}, 20_000);
