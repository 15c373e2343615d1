import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** The numbers of one filling in the drawing, cell by cell. */
const drawn = (filling: number, fillings: number): number[] =>
  [...document.querySelectorAll('.sheet-cells text')]
    .slice(1)
    .filter((_, i) => i % fillings === filling)
    .map((text) => Number.parseFloat(text.textContent));

it.each([1, 2, 7, 24, 36])(
  'draws the sheet of %d loaves, its shares the weighed fillings',
  async (loaves) => {
    const at = await atBench('bulk.scatter', loaves);
    await at.press('Show the sheet');
    const picture = await screen.findByRole('img', { name: /^A sheet of/ }, { timeout: 10_000 });
    const { filling } = at.house.kitchen().bakes[at.bake]!.context.recipe.lines;
    expect(filling.length).toBeGreaterThan(1);
    for (const [i, line] of filling.entries()) {
      const shares = drawn(i, filling.length);
      expect(shares).toHaveLength(loaves);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(line.grams);
      // The same in words, for eyes and for ears.
      const most = `${Math.max(...shares)} g of ${line.name}`;
      expect(picture.getAttribute('aria-label')).toContain(most);
      expect(
        document.querySelector('.sheet-words')?.textContent.replaceAll('\u00a0', ' '),
      ).toContain(most);
    }
    expect(picture.getAttribute('aria-label')).toContain('3 cm');
    expect(document.querySelectorAll('.sheet-cells rect:not(.sheet-label)')).toHaveLength(loaves);
    await at.press('Back to the bench');
    await vi.waitFor(() => expect(screen.queryByRole('img', { name: /^A sheet of/ })).toBeNull());
  },
  20_000,
);

it('keeps New reading in More where the sheet has its place', async () => {
  const at = await atBench('bulk.scatter');
  await at.press('More');
  await at.press('New reading');
  expect(screen.getByRole('dialog').textContent).toContain('Dough temperature');
});
