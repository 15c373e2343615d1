// @vitest-environment node
import { expect, it } from 'vitest';
import { breakMany, KINDS } from './broken.ts';

it.each(KINDS)(
  'of 250 broken files (%s) each is refused with a reason, or is a formula still',
  { timeout: 60_000 },
  async (kind) => {
    const { refused, longest, unsaid } = await breakMany(kind, 250, 1);
    expect(unsaid).toEqual([]);
    expect(refused).toBeGreaterThan(60);
    expect(longest, 'ms').toBeLessThan(1_000);
  },
);
