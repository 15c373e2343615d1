import { afterAll, afterEach, beforeEach, expect, it, vi } from 'vitest';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { aPerson } from '../fakes/said-phrases.ts';
import { bakes, newTablet, savedBy, takes, wiped } from '../fakes/two-tablets.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

it('has no voice that the ear knows in a saved file, whatever is ticked: elsewhere it knows nobody', async () => {
  const tablet = await newTablet('counter');
  await bakes(tablet);
  const ear = await tablet.house.ear();
  const person = aPerson(['springs', 'stays'], { mark: 'boat', child: true });
  person.sayings.springs![0]!.plain.data[0] = 7177.25;
  expect(await ear.keep(person)).toBeNull();
  tablet.house.equip({ ear: 'plain' });
  const file = await savedBy(tablet, true);
  expect(file).toContain('bulk.proving');
  expect(file).not.toMatch(/sayings|springs|boat|7177/);
  const { tablet: other } = await takes(await wiped(tablet), file);
  expect((await other.house.ear()).people()).toEqual([]);
  expect(other.house.equipment().ear).toBe('off');
});
