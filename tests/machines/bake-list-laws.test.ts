import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBakeList } from '../../src/core/log/bake-list.ts';
import { bakePage } from '../../src/core/log/bake-page.ts';
import { commandRuns } from './support/commands.ts';
import { Driver } from './support/driver.ts';

describe('the list of a kitchen’s bakes', () => {
  it('says of each what its page says, whatever hands did and took back', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(commandRuns(120), (run) => {
        const driver = new Driver();
        driver.run(run);
        const { records } = driver.hand;
        for (const line of makeBakeList()(records).bakes) {
          const page = bakePage(records, line.bake, { begun: line.start })!;
          const { how } = page.end;
          seen.set(how, (seen.get(how) ?? 0) + 1);
          expect(line).toMatchObject({ name: page.name, formula: page.formula, note: page.note });
          if (how === 'open') expect(line.turned).toBe('open');
          else if (how === 'left' || how === 'early') expect(line.turned).toBe('early');
          else expect(['early', 'open']).not.toContain(line.turned);
          // Of one that a jump left behind only the page knows when.
          if (how !== 'left') expect(line.to).toBe(page.to);
        }
      }),
      { seed: 20_310_506, numRuns: 30, unbiased: true },
    );
    expect([...seen.keys()]).toEqual(expect.arrayContaining(['open', 'handedOver', 'left']));
  }, 120_000);
});
