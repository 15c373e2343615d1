import type { Baker } from './baker.ts';
import { beginBread } from './begin-bread.ts';
import type { PageStep } from './page-step.ts';
import { walkOn } from './walk-on.ts';

const on = (name: string, from: string, to: string): PageStep => ({
  name,
  go: (baker: Baker) => walkOn(baker, from, to),
});

/** A filled bake of six loaves, whose dough two bowls take: where the bench tells of each of them. */
export const BOWL_PAGES: readonly PageStep[] = [
  {
    name: 'two bowls, read through',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await beginBread(baker, 'Cherry and hazelnut', 'Feed now', 4);
      await baker.page.locator('.through').waitFor();
    },
  },
  on('two bowls, weighed', 'read-plan', 'mix-weigh-1'),
  on('two bowls, the water', 'mix-weigh-1', 'mix-weigh-3'),
  on('two bowls, mixed', 'mix-weigh-3', 'mix-first'),
  on('two bowls, the salt', 'mix-first', 'mix-salt-1'),
  on('two bowls, the next fold', 'mix-salt-1', 'bulk-between-1'),
  on('two bowls, the filling', 'bulk-between-1', 'bulk-scatter-1'),
];
