import { expect, it } from 'vitest';
import { walkTo } from '../machines/support/onward.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { hotOven, openAt } from './harness/hot-oven.ts';
import { lookAt, WAYS } from './harness/look-at.ts';
import { everyWay } from './harness/ways.ts';
import { Walker } from './harness/walker.ts';

const SIX = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

it('keeps twenty-four loaves in six pots readable on every tablet, plain and bigger', async () => {
  const hand = hotOven(SIX, 24);
  for (const pot of SIX) {
    walkTo(hand, 'oven', 'load');
    const [loaf] = hand.kitchen.oven.context.waiting;
    hand.press('oven', 'loaded', { loaves: [loaf], lane: `lane.${pot}` });
    hand.turn(2);
  }
  const app = await openAt(hand);
  const baker = new Baker(app);
  await new Walker(baker, { takeBack: [], reload: [] }).clear();
  // In bigger words where there is less room, plain where there is most.
  const ways = everyWay({ ...WAYS, theme: ['light'], hands: ['right'] } as const).filter(
    ({ view, text }) => (view === 'wide') === (text === 'plain'),
  );
  await lookAt(app, 'a wait beside other pots', ways);
  await baker.press('Show the pots');
  await app.page.locator('.lanes-chart').waitFor();
  await app.turn(1_000);
  await lookAt(app, 'pots', ways);
  // No label lies over another, and none reaches out of its lane.
  for (const way of ways) {
    await app.setViewport(way.view);
    await app.page.evaluate((text) => (document.documentElement.dataset['text'] = text), way.text);
    await app.turn(100);
    const over = await app.page.evaluate(() =>
      [...document.querySelectorAll('.lanes-track')].flatMap((track) => {
        const box = track.getBoundingClientRect();
        const marks = [...track.querySelectorAll('.lanes-mark, .lanes-number')];
        const places = marks.map((el) => el.getBoundingClientRect());
        const sorted = places.toSorted((a, b) => a.left - b.left);
        return [
          ...places.filter(({ left, right }) => left < box.left - 1 || right > box.right + 1),
          ...sorted.filter(({ left }, i) => i > 0 && left < sorted[i - 1]!.right - 1),
        ].map(({ left, right }) => `${left} ${right}`);
      }),
    );
    expect.soft(over, `${way.view} ${way.text}`).toEqual([]);
  }
  await app.setViewport('wide');
  for (const [name, label] of [
    ['pots, later', 'Show later'],
    ['pots as a table', 'As a table'],
    ['loaves that wait', 'Loaves that wait'],
    ['a loaf’s turn', 'Loaf 9'],
  ] as const) {
    await baker.press(label);
    await app.turn(1_000);
    await lookAt(app, name, [
      { view: 'wide', theme: 'dark', hands: 'left', text: 'plain' },
      { view: 'tall', theme: 'light', hands: 'right', text: 'bigger' },
    ]);
  }
  await baker.press('Leave it as it is');
  await baker.press('Back to the pots');
  await baker.press('Stop using a pot');
  await app.turn(1_000);
  await lookAt(app, 'which pot is out', [
    { view: 'small', theme: 'light', hands: 'right', text: 'bigger' },
  ]);
  expectNoFaults(app.faults);
});
