import { turned, back, press, to, type PageStep } from './page-step.ts';
import { withYear } from './year-kitchen.ts';

/** A press on a sign's second picture, and the next sign or what they come to. */
const sign = (name: string): PageStep => ({
  name,
  go: (baker) => turned(baker, '.tile >> nth=1'),
});

/** A loaf of a year's last bake is cut and read, and its bread's bakes stand side by side. */
export const CUT_PAGES: readonly PageStep[] = [
  withYear('cut loaf, a year before it'),
  {
    name: 'cut loaf, its first sign',
    async go(baker) {
      await press(baker, ['Log']);
      await turned(baker, '.log-bake');
      await press(baker, ['Cut loaf']);
      await baker.page.locator('.cut-pictures').waitFor();
    },
  },
  sign('cut loaf, its second sign'),
  sign('cut loaf, what it comes to'),
  to('cut loaf, what to do about it', 'What to do'),
  to('cut loaf, what it comes to, again', 'Back to the loaf'),
  back('cut loaf, kept', 1),
  to('side by side', 'Side by side'),
  to('side by side as a table', 'As a table'),
];
