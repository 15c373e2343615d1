import { cleanup } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, expect, it, vi } from 'vitest';
import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import { openHouse } from '../../../src/app/open-house.ts';
import { beforeOvenItems } from '../../../src/core/records/lists.ts';
import { MINUTE } from '../../../src/core/units.ts';
import type { House } from '../../../src/screens/house.ts';
import { onBench, type OnBench } from './on-bench.tsx';

vi.setConfig({ testTimeout: 40_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const LANE = 'lane.left';
const act = (at: OnBench, who: string, name: string, more: object = {}) =>
  at.house.take({ kind: 'press', who, act: name, ...more } as never);
const lookIn = (house: House): number =>
  (deadlineOf(house.kitchen().lanes[LANE]!)! - house.now()) / MINUTE;

/** A filled loaf whose lid is off, so many minutes before its look. */
const open = async (left: number, equip = {}): Promise<OnBench> => {
  const at = await onBench('oven.queued', { equip, spoken: false });
  await act(at, 'oven', 'ovenOn', { lanes: [LANE] });
  at.turn(45);
  await act(at, 'oven', 'ovenHot');
  await act(at, 'oven', 'pokeReady');
  for (const item of beforeOvenItems('pot'))
    await act(at, 'oven', 'answer', { item, value: 'ready' });
  await act(at, 'oven', 'scored');
  const [loaf] = at.house.kitchen().oven.context.waiting;
  await act(at, 'oven', 'loaded', { loaves: [loaf], lane: LANE });
  at.turn(lookIn(at.house));
  await act(at, LANE, 'lidOff');
  at.turn(lookIn(at.house) - left);
  expect(lookIn(at.house)).toBe(left);
  return at;
};
/** Keyed spot after spot, with what is pressed after the last of them. */
const measure = async (at: OnBench, ...spots: readonly string[]): Promise<void> => {
  await at.press(/^New reading/);
  await at.press(/^Inside the loaf/);
  for (const [i, spot] of spots.entries()) {
    for (const key of spot) await at.press(new RegExp(`^${key}$`));
    const count = at.facts().length;
    await at.press(i < spots.length - 1 ? /^One more spot/ : /^That’s it/);
    await vi.waitFor(() => expect(at.facts().length).toBe(count + 1));
  }
};
const moreOf = (at: OnBench) =>
  at
    .facts()
    .at(-1)
    ?.results?.find(({ cored }) => cored)?.cored?.more;

it('moves the look of a low core, says for how long, and is taken back and reloaded whole', async () => {
  const at = await open(8);
  await measure(at, '84', '85');
  const more = moreOf(at)!;
  expect(more).toBeGreaterThan(8);
  expect(lookIn(at.house)).toBe(more);
  await vi.waitFor(() => expect(at.said.at(-1)).toMatch(/^Raw inside\. About \w+ minutes more\.$/));
  const time = at.house.hour(at.house.now() + more * MINUTE);
  await vi.waitFor(() => expect(document.body.textContent).toContain(`Look at ${time}.`));
  const again = await createRoot(() => openHouse(at.world));
  expect(lookIn(again)).toBe(more);
  expect(again.lost()).toBeNull();
  await at.house.takeBack();
  await at.house.takeBack();
  expect(lookIn(at.house)).toBe(8);
});

it('foretells nothing by one low spot of a filled loaf, and says what was read', async () => {
  const at = await open(8);
  await measure(at, '84');
  expect(moreOf(at)).toBeNull();
  expect(lookIn(at.house)).toBe(8);
  await vi.waitFor(() => expect(at.said.at(-1)).toMatch(/inside the loaf/));
});

it('measures against what water allows up here', async () => {
  const at = await open(8, { height: 1500 });
  await measure(at, '89');
  expect(
    at
      .facts()
      .at(-1)!
      .results!.find(({ cored }) => cored)!.cored,
  ).toMatchObject({
    height: 1500,
    more: null,
  });
  expect(lookIn(at.house)).toBe(8);
});

it('takes 205 keyed in °C for no core: its point is the keypad’s, and nothing moves', async () => {
  const at = await open(8);
  await measure(at, '205');
  expect(at.facts().at(-1)).toMatchObject({ reading: { celsius: 20.5 } });
  expect(moreOf(at)).toBeNull();
  expect(lookIn(at.house)).toBe(8);
});
