import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { MACHINES } from '../../../machines/kitchen/kitchen.ts';
import { newLane } from '../../../machines/kitchen/new-lane.ts';
import { loavesToKeep } from '../../../src/screens/bench/loaves-to-keep.ts';
import { atBench, lastFact } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

it('bakes fewer loaves than planned, and takes that back', async () => {
  const at = await atBench('shape.divide', 4);
  const { loaves } = at.house.kitchen().bakes[at.bake]!.context;
  await at.press('More');
  await at.press('Fewer loaves');
  await at.press('One less');
  await at.press('One less');
  await at.press('That many');
  expect(await lastFact(at, 'press')).toMatchObject({ act: 'fewer', loaves: loaves.slice(0, 2) });
  expect(at.house.kitchen().bakes[at.bake]!.context.loaves).toEqual(loaves.slice(0, 2));
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  await at.press('Take that back');
  await lastFact(at, 'takeBack');
  expect(at.house.kitchen().bakes[at.bake]!.context.loaves).toEqual(loaves);
}, 20_000);

it('is not offered where one loaf is all there is', async () => {
  const at = await atBench('shape.divide', 1);
  await at.press('More');
  await screen.findByRole('dialog');
  expect(screen.queryByRole('button', { name: /^Fewer loaves/ })).toBeNull();
  expect(loavesToKeep(at.house.kitchen(), at.bake)).toMatchObject({ least: 1 });
}, 20_000);

it('gives up nothing that is in a pot or out of it, nor after the oven', async () => {
  const { house, bake } = await atBench('shape.divide', 3);
  const kitchen = house.kitchen();
  const { loaves } = kitchen.bakes[bake]!.context;
  const { oven } = kitchen;
  const hot = { ...oven, context: { ...oven.context, out: [loaves[1]!] } };
  const lanes = {
    'lane.left': newLane(kitchen, MACHINES, [loaves[2]!], kitchen.now),
  };
  const keep = loavesToKeep({ ...kitchen, oven: hot as typeof oven, lanes }, bake);
  expect(keep).toEqual({ all: [loaves[1], loaves[2], loaves[0]], least: 2 });
  const cool = { ...kitchen.bakes[bake]!, value: { cool: 'cooling' } };
  const after = loavesToKeep({ ...kitchen, bakes: { [bake]: cool as never } }, bake);
  expect(after.least).toBe(3);
}, 20_000);
