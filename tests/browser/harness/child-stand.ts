import { RECIPE } from '../../machines/support/recipe.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import type { Baker } from './baker.ts';
import { emptyRows, putRows } from './put-rows.ts';
import { settled } from './settled.ts';

/** A walk that begins when it must to end in this very minute. */
export const endsAt = (now: Instant, walked: (begins: Instant) => Hand): Hand =>
  walked(now - (walked(now).now - now));

/** A bake that came to a stage just now. */
const comeTo = (stage: string, loaves: number, now: Instant): Hand => {
  const atOven = !stage.includes('.');
  const late = atOven || stage.startsWith('cool');
  const from: BakeStage = late ? 'oven.queued' : 'mix.first';
  return endsAt(now, (begins) => {
    const hand = new Hand({ now: begins });
    const ids = Array.from({ length: loaves }, (_, i) => `a${i + 1}`);
    hand.start('a', from, ids, RECIPE);
    return walkTo(hand, atOven ? 'oven' : 'a', stage);
  });
};

export interface Stands {
  readonly loaves?: number;
  /** It is looked at while it calls. */
  readonly rings?: boolean;
  /** A wait is looked at so many minutes on. */
  readonly minutes?: number;
}

/** The kitchen has another log, its ways as they were; what rings then is hushed. */
export const standWith = async (
  baker: Baker,
  logAt: (now: Instant) => readonly LogRecord[],
  wanted: Stands = {},
): Promise<void> => {
  const records = logAt(await baker.page.evaluate(() => Date.now()));
  await baker.page.evaluate(emptyRows());
  await baker.page.evaluate(putRows(records));
  await baker.app.reopen();
  await baker.page.locator('.act-headline, .lesson').first().waitFor();
  if (wanted.minutes !== undefined) await baker.app.turn(wanted.minutes * MINUTE);
  if (wanted.rings) return baker.page.locator('.call').first().waitFor();
  await baker.app.turn(1_000);
  // On a busy machine the card of who was away comes after the turn.
  await settled(baker.page);
  if ((await baker.page.locator('.call').count()) > 0) await baker.hush();
  if ((await baker.page.locator('.return').count()) > 0) await baker.press('I’ve read it');
};

/** The same at a stage. */
export const stand = (baker: Baker, stage: string, wanted: Stands = {}): Promise<void> =>
  standWith(baker, (now) => comeTo(stage, wanted.loaves ?? 2, now).records, wanted);
