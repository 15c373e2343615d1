import { back, to, turned, type PageStep } from './page-step.ts';
import { withYear } from './year-kitchen.ts';

/** Plots of a year's bakes, and the bakes of one bread side by side. */
export const LOG_PLOT_PAGES: readonly PageStep[] = [
  withYear('start, with a year of bakes'),
  {
    name: 'log, before its plots',
    async go(baker) {
      await turned(baker, 'button:not(.slab):has-text("Log") >> nth=-1');
      await baker.page.locator('.log-bake').first().waitFor();
    },
  },
  {
    name: 'log plots',
    async go(baker) {
      await turned(baker, 'button:not(.slab):has-text("All my bakes") >> nth=-1');
      await baker.page.locator('.plot-choice').waitFor();
    },
  },
  to('log plots, rise and cold', 'Rise and cold'),
  to('log plots, rise and cold as a table', 'As a table'),
  back('log plots, the starter', 1, 'Starter and seasons'),
  to('log plots, the starter as a table', 'As a table'),
  back('log plots, forecasts', 1, 'Forecasts'),
  to('log plots, forecasts as a table', 'As a table'),
  back('log plots, which bread', 1, 'Bread'),
  to('log plots, of one bread', 'Lane wheat'),
];
