import { back, keyed, press, to, type PageStep } from './page-step.ts';

/** The Day, from the start page: what it asks, hours away, where nothing fits, the plan and what is on it. */
export const DAY_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the day',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
    },
  },
  {
    name: 'day, asked',
    async go(baker) {
      await press(baker, ['Plan a day']);
      // Until its chunk has come nothing is there.
      await baker.page.locator('h1:has-text("Plan a day")').waitFor();
    },
  },
  to('day, which bread', 'Which bread?'),
  to('day, how many loaves', 'Cherry and hazelnut', 'How many loaves?'),
  back('day, which day', 1, 'Ready when?'),
  to('day, later days', 'Later days'),
  to('day, what time', 'Sooner days', 'Tomorrow'),
  {
    name: 'day, half an hour later',
    async go(baker) {
      await baker.press('Half an hour later');
      await baker.page.locator('.act-detail').waitFor();
    },
  },
  to('day, how warm', '12:00', 'How warm is the kitchen?'),
  to('day, how warm, keyed', 'Key it in'),
  keyed('day, how warm, keyed in', '22'),
  back('day, when away', 1, 'Asleep or out'),
  to('day, hours of the week', 'asleep'),
  to('day, what they are', 'What is it?'),
  to('day, on which days', 'at work', 'On which days?'),
  to('day, from when', 'every day', 'From when?'),
  back('day, when away, once', 1, 'What is it?', 'asleep'),
  back('day, once', 1, 'Add once'),
  to('day, once, which day', 'On which day?'),
  back('day, once, until when', 1, 'Until when?'),
  back('day, away', 1, 'Take it off'),
  back('day, ready to ask', 1),
  {
    name: 'day, nothing fits',
    async go(baker) {
      await baker.tap('.slab');
      await baker.page.locator('.day-offers').waitFor();
    },
  },
  {
    name: 'day, the plan',
    async go(baker) {
      await baker.tap('.day-offers button >> nth=0');
      await baker.page.locator('.tape').waitFor();
    },
  },
  {
    name: 'day, a touch',
    async go(baker) {
      await baker.tap('.tape-touch >> nth=0');
      await baker.page.locator('.day-lines').waitFor();
    },
  },
  to('day, a touch put to an hour', 'Keep this time'),
  back('day, more', 1, 'More'),
  to('day, as a table', 'As a table'),
  {
    name: 'day, said',
    async go(baker) {
      await baker.press('Say the day');
      await baker.app.turn(100);
      await baker.page.locator('.caption:not(:empty)').waitFor();
    },
  },
  {
    name: 'day, taken',
    async go(baker) {
      await baker.noted(() => baker.tap('.slab'));
      await baker.page.locator('.slab:has-text("That’s it"), .slab:has-text("Feed")').waitFor();
    },
  },
  to('day, given up, asked', 'More', 'Give it up'),
  back('start, a plan stands', 0, 'No, keep it', 'Close'),
  {
    name: 'day, two breads',
    async go(baker) {
      await baker.press('Change it');
      await baker.press('Another bread');
      await baker.page.locator('.day-grid > :nth-child(3)').waitFor();
    },
  },
];
