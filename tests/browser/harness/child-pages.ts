import { stand, type Stands } from './child-stand.ts';
import { last, press, to, turned, type PageStep } from './page-step.ts';

const child = (name: string, stage: string, wanted?: Stands): PageStep => ({
  name,
  async go(baker) {
    await stand(baker, stage, wanted);
    // While it rings there is its call, and nothing for a child to do but stand back.
    if (wanted?.rings) return;
    await baker.page.locator('.paper, .small-task').first().waitFor();
  },
});

/** Of children of other ages from here on. */
const ages = (name: string, label: string): PageStep => ({
  name,
  async go(baker) {
    await press(baker, ['More', 'Small hands']);
    // Its chunk may be late: the page before the sheet came is the page after it went.
    await baker.page.locator(last(label)).waitFor();
    await press(baker, [label]);
    await baker.page.locator('.small-task').waitFor();
  },
});

/** A bake as a child sees it, at three ages, and what lies around that view. */
export const CHILD_PAGES: readonly PageStep[] = [
  {
    name: 'small hands, whose',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await stand(baker, 'mix.first');
      await press(baker, ['More', 'Small hands']);
    },
  },
  {
    name: 'small hands, mix, 4 to 6',
    async go(baker) {
      await press(baker, ['4 to 6']);
      await baker.page.locator('.small-task').waitFor();
    },
  },
  ages('small hands, mix, 7 to 9', '7 to 9'),
  to('small hands, whose, chosen', 'More', 'Small hands'),
  {
    name: 'small hands, what is the grown-up’s',
    async go(baker) {
      await press(baker, ['Close', 'More', 'End this bake']);
      await baker.page.locator('.sheet .tile').first().waitFor();
    },
  },
  child('small hands, a rest, 7 to 9', 'mix.rest', { minutes: 12 }),
  child('small hands, a fold, 7 to 9', 'bulk.fold'),
  child('small hands, a spread, 7 to 9', 'bulk.spread'),
  child('small hands, a filling, 7 to 9', 'bulk.scatter'),
  child('small hands, a look, 7 to 9', 'bulk.look'),
  child('small hands, four pieces, 7 to 9', 'shape.divide', { loaves: 4 }),
  child('small hands, a call, 7 to 9', 'lift', { rings: true }),
  child('small hands, a gate, 7 to 9', 'turnOn'),
  ages('small hands, a gate, 10 to 12', '10 to 12'),
  {
    name: 'small hands, behind a gate, 10 to 12',
    go: async (baker) => {
      await baker.hold();
      await baker.page.locator('.small-task').waitFor();
    },
  },
  child('small hands, the oven heats, 10 to 12', 'preheating', { minutes: 10 }),
  child('small hands, a lidded loaf, 10 to 12', 'lidded', { minutes: 5 }),
  child('small hands, cooling, 10 to 12', 'cool.cooling', { minutes: 20 }),
  child('small hands, the loaves rise, 10 to 12', 'bulk.proving', { minutes: 30 }),
  {
    name: 'the baker’s view for a moment, the loaves rise',
    async go(baker) {
      if ((await baker.page.locator('button.ear').count()) > 0) await baker.tap('button.ear');
      await press(baker, ['Baker’s view']);
      await baker.page.locator('.bench-ear button:has-text("Small hands")').waitFor();
    },
  },
  {
    name: 'small hands, back by one press',
    async go(baker) {
      await turned(baker, '.bench-ear button:has-text("Small hands")');
      await baker.page.locator('.small-task').waitFor();
    },
  },
  ages('small hands, the loaves rise, 4 to 6', '4 to 6'),
  child('small hands, two pieces, 4 to 6', 'shape.divide'),
  child('small hands, a fold, 4 to 6', 'bulk.fold'),
  child('small hands, a filling, 4 to 6', 'bulk.scatter'),
  child('small hands, weighing, 4 to 6', 'mix.temperature'),
  child('small hands, shaping, 4 to 6', 'shape.finalShape'),
  to('small hands, marks', 'Pick your mark'),
  {
    name: 'small hands, two marks',
    async go(baker) {
      await press(baker, ['Fish', 'Boat', 'Close']);
      await baker.page.locator('.small-mark').waitFor();
    },
  },
  child('small hands, cooling with marks, 4 to 6', 'cool.cooling', { minutes: 60 }),
];

/** What a learner is told, from the first loaf that is asked for on. */
export const LEARNER_PAGES: readonly PageStep[] = [
  {
    name: 'my first loaf',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await press(baker, ['More', 'My first loaf']);
    },
  },
  {
    name: 'lesson, why it is divided',
    async go(baker) {
      await stand(baker, 'shape.divide');
      await baker.page.locator('.lesson').waitFor();
    },
  },
  {
    name: 'lesson, a new word',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await baker.page.locator('.act-place:has-text("A new word")').waitFor();
    },
  },
  {
    name: 'lesson, a wait',
    async go(baker) {
      await stand(baker, 'bulk.proving');
      await baker.page.locator('.lesson').waitFor();
    },
  },
  {
    name: 'lesson, a sign',
    async go(baker) {
      for (let n = 0; n < 6; n++) {
        if ((await baker.page.locator('.act-place:has-text("A sign to know")').count()) > 0) return;
        await baker.tap('.slab:visible');
        await baker.app.turn(100);
      }
      throw new Error('The lesson has no sign.');
    },
  },
  {
    name: 'lesson, once more',
    async go(baker) {
      await press(baker, ['More', 'Why, and how it looks']);
      await baker.page.locator('.sheet .lesson').waitFor();
    },
  },
  to('lesson, once more, a sign', 'Go on', 'Go on'),
];
