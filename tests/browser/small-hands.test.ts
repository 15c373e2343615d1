import { expect, it } from 'vitest';
import { smallWords } from '../../src/core/small/small-words.ts';
import { HOUR } from '../../src/core/units.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openAt } from './harness/hot-oven.ts';
import { START } from './harness/open-app.ts';

const handAt = (stage: string): Hand => {
  const hand = new Hand({ now: START - 12 * HOUR });
  hand.start('a', stage === 'turnOn' ? 'oven.queued' : 'bulk.proving', ['a1', 'a2']);
  return walkTo(hand, stage === 'turnOn' ? 'oven' : 'a', stage);
};

/** Turned to small hands from wherever the bench stands. */
const withChild = async (hand: Hand): Promise<Baker> => {
  const baker = new Baker(await openAt(hand));
  if ((await baker.page.locator('.call').count()) > 0) await baker.hush();
  for (const label of ['More', 'Small hands', '4 to 6']) await baker.press(label);
  await baker.page.locator('.paper').waitFor();
  return baker;
};

it('walks safe steps by a child’s slab, through what is counted and a wait', async () => {
  const baker = await withChild(handAt('shape.divide'));
  expect(await baker.headline()).toBe(smallWords('4-6', 'shape.divide').act);
  for (const n of [0, 1]) await baker.tap(`.count-tile >> nth=${n}`);
  expect(await baker.page.locator('.count-tile[aria-pressed="true"]').count()).toBe(2);
  await baker.slab();
  expect(await baker.headline()).toBe(smallWords('4-6', 'shape.preshape').act);
  const told = baker.page.locator('.small-praise');
  expect(await told.innerText()).toBe(smallWords('4-6', 'shape.divide').praise);
  await baker.slab();
  await baker.page.locator('.wait-path[data-passed="0"]').waitFor();
  expect((await baker.facts()).slice(-2).map(({ act }) => act)).toEqual(['divided', 'preshaped']);
  // It is the same bake, and the view is kept.
  await baker.app.reopen();
  await baker.page.locator('.wait-path').waitFor();
  await baker.press('Baker’s view');
  await baker.page.locator('.times-number').waitFor();
  expectNoFaults(baker.app.faults);
});

it('has a gate that a tap does not open and a hold does', async () => {
  const baker = await withChild(handAt('turnOn'));
  await baker.page.locator('.small-stand').waitFor();
  for (let n = 0; n < 2; n += 1) await baker.tap('.hold');
  expect(await baker.page.locator('.hold').count()).toBe(1);
  expect(await baker.page.locator('button:has-text("First here")').count()).toBe(0);
  await baker.hold();
  await baker.page.locator('.slab:not(.hold)').waitFor();
  // What a child does there comes a moment behind it.
  await baker.page.locator('.small-task').waitFor();
  expectNoFaults(baker.app.faults);
});
