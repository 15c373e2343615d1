import { beginBread } from './begin-bread.ts';
import { back, keyed, press, to, turned, type PageStep } from './page-step.ts';

/** Ways of showing and what opens from there; it ends on the page it began on. */
const WAYS_PAGES: readonly PageStep[] = [
  to('ways', 'Ways of showing'),
  to('bank card', 'Size by a bank card'),
];

/** Start, each of its faces, and what lies over it. */
const START_PAGES: readonly PageStep[] = [
  { name: 'start', go: (baker) => baker.page.locator('.start-grid').waitFor() },
  to('which bread', 'Which bread?'),
  back('how many loaves', 1, 'How many loaves?'),
  to('how heavy is a baked loaf', 'Each loaf, baked'),
  keyed('how heavy is a baked loaf, keyed in', '800'),
  back('loaves of a weight', 1, 'How many loaves?'),
  to('loaves as in the recipe', 'As in the recipe'),
  back('how warm', 1, 'How warm is the kitchen?'),
  keyed('how warm, keyed in', '22'),
  back('where is the dough', 1, 'Where is your dough?'),
  back('log, empty', 1, 'Log'),
  back('start, ready', 1),
  back('sound check before the first bake', 1),
  to('start, more', 'Start a bake', 'More'),
  to('small hands, from the start', 'Small hands'),
  to('take care', 'Close', 'Take care'),
  to('start, more again', 'Close'),
  ...WAYS_PAGES,
];

/** The Kitchen, from the start page: each page, its questions, its second page. */
const KITCHEN_PAGES: readonly PageStep[] = [
  {
    name: 'kitchen',
    async go(baker) {
      await press(baker, ['Close', 'Close', 'Close', 'Kitchen']);
      await baker.page.locator('.kitchen-grid').waitFor();
    },
  },
  to('pots and tins', 'Pots and tins'),
  to('pots', 'What are the pots made of?'),
  to('pot', 'Pot 1'),
  to('what the pot is made of', 'Made of'),
  to('what a pot of clay may not do', 'Clay'),
  back('how many litres', 1, 'How big'),
  back('no pot for the heat', 3),
  back('oven', 1, 'Oven'),
  to('highest heat', 'Highest heat'),
  back('how high up', 1, 'Above sea level'),
  keyed('how high up, keyed in', '1500'),
  back('oven, high up', 1),
  back('fridge', 1, 'Fridge'),
  to('how cold is the fridge', 'How cold'),
  { name: 'how cold, keyed in', go: (baker) => baker.key('7') },
  back('a warm fridge', 1),
  back('bowls', 1, 'Bowls'),
  to('how many bowls', 'How many'),
  back('scale', 2, 'Scale'),
  to('a rough scale', '5'),
  back('this tablet', 1, 'This tablet'),
  to('night hours', 'Night hours'),
  to('quiet from', 'Quiet from'),
  back('sound check', 2, 'Sound check'),
  to('the voice', 'The voice'),
  back('sound check, asked', 2),
  to('sound check, not heard', 'I did not'),
  back('read a saved file', 1, 'Read a saved file'),
  back('save as a file', 1, 'Save as a file'),
  {
    name: 'a saved file, found',
    async go(baker) {
      const [saved] = await Promise.all([
        baker.page.waitForEvent('download'),
        turned(baker, '.slab:visible'),
      ]);
      await press(baker, ['Read a saved file']);
      await baker.page.locator('input[type=file]').setInputFiles(await saved.path());
      await baker.page.locator('.hold').waitFor();
    },
  },
  to('no promise', 'This tablet', 'What a tablet cannot promise'),
  back('pedal', 1, 'Pedal or clicker'),
  to('pedal, asked', 'That’s done'),
  back('this tablet, checked', 2),
];

/** Readings, timers and whatever else lies over the bench of a rising dough. */
const OVER_PAGES: readonly PageStep[] = [
  {
    name: 'bulk.proving',
    async go(baker) {
      await baker.app.reopen();
      await baker.page.locator('.start-grid').waitFor();
      // What was keyed in has outlived the reload.
      await press(baker, ['How warm is the kitchen?', 'Clear']);
      await baker.tap('.slab');
      await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl', 2);
    },
  },
  to('more', 'More'),
  to('fewer loaves', 'Fewer loaves'),
  to('end this bake', 'Back to the bench', 'More', 'End this bake'),
  to('something is wrong', 'Keep baking', 'Back to the bench', 'More', 'Something is wrong'),
  { name: 'what to do about a sign', go: (baker) => turned(baker, '.sheet .tile') },
  to('timer', 'Back to the bench', 'More', 'Timer'),
  keyed('timer, keyed in', '15'),
  to('new reading', 'Back to the bench', 'New reading'),
  keyed('new reading, keyed in', '24'),
  {
    name: 'other readings',
    async go(baker) {
      await press(baker, ['Clear', 'Other readings']);
    },
  },
  ...[
    'Dough temperature',
    'Dough rise, by eye',
    'Levain rise, in %',
    'Dent test',
    'Piece weight',
    'Crust colour',
    'Edge and bubbles',
  ].map((kind, n) =>
    to(
      `reading: ${kind}`,
      ...(n === 0 ? [kind] : ['Back to the bench', 'New reading', 'Other readings', kind]),
    ),
  ),
  to('reading: bubbles', 'Domed'),
  {
    name: 'reading: an odd number',
    async go(baker) {
      await press(baker, [
        'Back to the bench',
        'New reading',
        'Other readings',
        'Dough temperature',
      ]);
      await baker.key('38');
    },
  },
  back('reading: an odd number, asked', 1),
  {
    name: 'readings so far',
    async go(baker) {
      await baker.noted(() => baker.tap('.slab'));
      await press(baker, ['New reading', 'Readings so far']);
    },
  },
  to('a reading mended', 'Dough temperature'),
];

/** Start, Kitchen and what lies over a rising dough: in this order, from the app's first screen on. */
export const PAGES: readonly PageStep[] = [...START_PAGES, ...KITCHEN_PAGES, ...OVER_PAGES];
