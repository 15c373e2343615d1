import { expect, it } from 'vitest';
import { earShare } from '../bench/ear/open-share.ts';
import { builtSite } from '../browser/harness/built-site.ts';

/** A tablet does four times less in a second than a core of this machine: common practice in measuring, no source. */
const SLOWER = 4;

it('the ear costs a page little while it is open, and nothing while it is shut', async () => {
  const { before, open, shut } = await earShare(await builtSite());
  console.log(
    `The ear, shares of a core at ${SLOWER}×: before ${(100 * SLOWER * before).toFixed(1)} %, open ` +
      `${(100 * SLOWER * open).toFixed(1)} %, shut again ${(100 * SLOWER * shut).toFixed(1)} %.`,
  );
  expect(SLOWER * open).toBeLessThanOrEqual(0.25);
  // It heard at all.
  expect(open).toBeGreaterThan(before);
  // A page that was just opened works a little more than one that stood.
  expect(SLOWER * (shut - before)).toBeLessThanOrEqual(0.02);
}, 300_000);
