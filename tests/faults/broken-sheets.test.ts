import { expect, it } from 'vitest';
import { breakMany, KINDS } from '../adapters/sheets/broken.ts';

/** 20,000 files and links, broken by chance from seeds that are told: none may crash or hang a reader. */
const SEEDS = [2, 3, 4, 5, 6];

it.each(KINDS)(
  'of 5,000 broken files (%s) each is refused with a reason, or is a formula still',
  async (kind) => {
    for (const seed of SEEDS) {
      const { refused, longest, unsaid } = await breakMany(kind, 1_000, seed);
      console.log(
        `${kind}, seed ${seed}: ${refused} of 1,000 refused, ${longest.toFixed(0)} ms at most`,
      );
      expect(unsaid, `seed ${seed}`).toEqual([]);
      expect(refused, `seed ${seed}`).toBeGreaterThan(250);
      expect(longest, `seed ${seed}, ms`).toBeLessThan(1_000);
    }
  },
);
