import { describe, expect, it } from 'vitest';
import { fuzz } from '../hostile/fuzz.ts';
import type { Reader } from '../hostile/reader.ts';
import { READERS } from '../hostile/readers.ts';

/** One seed, so that a red run is red again; `npm run faults` takes many more, with a fresh one. */
const SEED = 20_310_503;
/** Of a reader with a whole share. */
const INPUTS = 68;
const inputsOf = ({ share = 1 }: Reader): number => Math.round(INPUTS * share);
/** Against what hangs: how long one may take stands in fuzz.ts. */
const PATIENCE = 120_000;

describe('broken and hostile input', () => {
  it.each(READERS)(
    'does no harm to $of',
    async (reader) => {
      const { inputs, taken, refused, faults } = await fuzz(reader, inputsOf(reader), SEED);
      expect(faults).toEqual([]);
      expect(taken).toBeGreaterThan(0);
      // Some read whatever they can and leave the rest out without a word.
      if (reader.ends !== 'taken') expect(refused).toBeGreaterThan(0);
      expect(taken + refused).toBe(inputs);
    },
    PATIENCE,
  );

  it('is some three thousand inputs, and each reader stands there once', () => {
    expect(READERS.map(inputsOf).reduce((all, some) => all + some)).toBeGreaterThan(3_000);
    expect(new Set(READERS.map(({ of }) => of)).size).toBe(READERS.length);
  });
});

describe('a reader that is at fault', () => {
  const shared = Object.prototype as unknown as Record<string, unknown>;
  const faultsOf = async (of: Partial<Reader>, patience?: number): Promise<string> => {
    const reader: Reader = {
      ...{ of: 'none', make: () => ({ a: 1 }), read: () => ({ taken: 1 }) },
      ...of,
    };
    const { faults } = await fuzz(reader, 2, SEED, patience);
    delete shared['polluted'];
    return faults.join();
  };

  it('is found by what it does', async () => {
    expect(await faultsOf({})).toBe('');
    const harms: readonly (readonly [string, Partial<Reader>])[] = [
      ['thrown', { read: () => JSON.parse('{') as never }],
      ['thrown', { read: (input: { a: number }) => ({ taken: (input.a = 2) }) }],
      ['what all objects share has changed', { read: () => ({ taken: (shared['polluted'] = 1) }) }],
      ['holds NaN at .a', { read: () => ({ taken: { a: Number.NaN } }) }],
      ['holds no plain object at .b', { read: () => ({ taken: { b: new Date(0) } }) }],
      ['no reason that can be shown', { read: () => ({ refused: [''] }) }],
      ['no reason that can be shown', { read: () => ({ refused: ['x'.repeat(2_000)] }) }],
      [
        'what it took it refuses',
        {
          again: true,
          read: (input: { a?: number }) => (input.a ? { taken: {} } : { refused: null }),
        },
      ],
      ['reads as another', { again: true, read: (input: object) => ({ taken: { input } }) }],
      [
        'its input was changed',
        {
          make: () => Uint8Array.of(1, 2),
          read: (input: Uint8Array) => ({ taken: input.fill(0).length }),
        },
      ],
    ];
    for (const [told, harm] of harms) expect(await faultsOf(harm), told).toContain(told);
  });

  it('is found by how long it takes', async () => {
    const slow = (): { taken: unknown } => {
      const began = process.cpuUsage();
      while (process.cpuUsage(began).user < 60_000);
      return { taken: 1 };
    };
    expect(await faultsOf({ read: slow }, 50)).toMatch(/ \d+ ms/);
  });
});
