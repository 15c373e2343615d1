import { HOUR } from '../../../src/core/units.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';

/** The starter between bakes, and its reminder: in this order, from the app's first screen on. */
export const STARTER_PAGES: readonly PageStep[] = [
  {
    name: 'starter, nothing known',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await press(baker, ['Kitchen', 'Starter']);
    },
  },
  to('where the jar stands', 'Where it stands'),
  back('how much is kept back', 1, 'Kept back'),
  back('its name', 1, 'Its name'),
  back('how fast it is', 1, 'How fast it is'),
  to('a new starter', 'It’s a new starter'),
  {
    name: 'strong enough, not fed',
    async go(baker) {
      await press(baker, ['Keep it']);
      await turned(baker, '.slab:visible');
      await press(baker, ['Is it strong?']);
    },
  },
  back('a feed, how warm', 1, 'I fed it'),
  {
    name: 'a feed, how much',
    async go(baker) {
      await baker.key('24');
      await turned(baker, '.slab:visible');
    },
  },
  {
    name: 'starter, fed',
    async go(baker) {
      await baker.noted(() => baker.tap('.tile:has-text("1:2:2")'));
      await baker.page.locator('.act-detail:has-text("Ripe between")').waitFor();
    },
  },
  to('strong enough, looked at', 'Is it strong?'),
  {
    name: 'strong enough, seen',
    async go(baker) {
      for (const seen of ['By half', 'Doubled']) {
        await baker.app.turn(2.4 * HOUR);
        await baker.noted(() => baker.tap(`.tile:has-text("${seen}")`));
      }
      await baker.page.locator('.act-headline:has-text("Strong enough")').waitFor();
    },
  },
  {
    name: 'start, the starter calls',
    async go(baker) {
      for (let n = 0; n < 3; n++) await turned(baker, '.slab:visible');
      await baker.app.turn(13 * HOUR);
      await baker.page.locator('.notice:has-text("should be ripe")').waitFor();
      await baker.noted(() => baker.press('See to it'));
    },
  },
  to('the starter, seen to', 'See to it'),
];
