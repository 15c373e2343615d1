import { expect, inject, it } from 'vitest';
import { manyOrders } from '../bench/many-orders.ts';

it('opens a circle of two thousand orders, and a bake day of it, at once on a slow tablet', async () => {
  for (const [page, ms] of await manyOrders(inject('site'), 4))
    // What is felt as at once takes no second: most of the first is its script coming.
    expect.soft(ms, page).toBeLessThan(page === 'first opened' ? 1_500 : 500);
});
