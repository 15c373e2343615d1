import { expect, it } from 'vitest';
import { walkKitchen, walkPots } from '../machines/support/random-hands.ts';

/** A fresh one each time, told so that a red run can be walked again. */
const seed = Date.now() % 2 ** 31;

it(`random hands bring a kitchen nowhere the model would not, seed ${seed}`, () => {
  expect(walkKitchen({ seed, runs: 400 }).commands).toBeGreaterThan(20_000);
});

it(`random hands at many pots lose no lid and call none twice, seed ${seed}`, () => {
  const { commands, lids } = walkPots({ seed, runs: 200 });
  expect(commands).toBeGreaterThan(10_000);
  expect(lids).toBeGreaterThan(200);
});
