import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { readScreen } from './harness/screen.ts';

/** All clock times on the bench, as shown. */
const hours = (text: string): string[] => text.match(/\b\d\d:\d\d\b/g) ?? [];

/** Nine hours on from Greenwich, with no summer time. */
const ZONE = 'Asia/Tokyo';
const later = (hour: string): string =>
  `${String((Number(hour.slice(0, 2)) + 9) % 24).padStart(2, '0')}${hour.slice(2)}`;

it('a zone that changes in the middle of a bake moves the hours shown, and no instant', async () => {
  // Without a zone of the context's own, so that the page's may be changed under it.
  const app = await openApp({ ownZone: true });
  const session = await app.context.newCDPSession(app.page);
  await session.send('Emulation.setTimezoneOverride', { timezoneId: 'Etc/UTC' });
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('Where is your dough?');
  await baker.press('My dough is in the bowl');
  await baker.begin();
  await app.turn(60_000);
  const bench = () => app.page.locator('.bench').innerText();
  const [before, rows] = [await readScreen(app.page), await app.storeRows()];
  const shown = hours(await bench());
  expect(shown.length).toBeGreaterThan(1);

  await session.send('Emulation.setTimezoneOverride', { timezoneId: ZONE });
  await app.turn(60_000);
  const after = await readScreen(app.page);
  expect(after.left! - before.left!).toBe(-60_000);
  // Only the hour it is now has moved by more than the zone.
  const fixed = shown.filter((hour) => !hour.startsWith('17:3'));
  expect(fixed.length).toBeGreaterThan(0);
  expect(hours(await bench())).toEqual(expect.arrayContaining(fixed.map(later)));
  expect(await app.storeRows()).toEqual(rows);
  expectNoFaults(app.faults);
});
