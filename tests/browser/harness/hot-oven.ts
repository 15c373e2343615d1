import { HOUR } from '../../../src/core/units.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { openApp, START, type App, type OpenOptions } from './open-app.ts';
import { putRows } from './put-rows.ts';

/** An oven that is hot with these pots, its first loaf to be looked at. */
export function hotOven(pots: readonly string[], loaves: number): Hand {
  const hand = new Hand({ now: START - 12 * HOUR });
  hand.start(
    'a',
    'oven.queued',
    Array.from({ length: loaves }, (_, i) => `a${i + 1}`),
  );
  hand.press('oven', 'ovenOn', { lanes: pots.map((pot) => `lane.${pot}`) });
  return walkTo(hand, 'oven', 'poke');
}

/** The app at the instant and with the log that a hand has come to. */
export async function openAt(hand: Hand, options: OpenOptions = {}): Promise<App> {
  const app = await openApp({ ...options, clock: hand.now });
  await app.page.evaluate(putRows(hand.records));
  await app.reopen();
  await app.page.locator('.act-headline').first().waitFor();
  return app;
}
