import type { Kitchen } from '../../../../machines/kitchen/kitchen.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { Instant } from '../../../core/units.ts';
import { areSeveral, bakeName } from '../../bake-name.ts';

/** A loaf by its place in its bake, counted as the bench counts it. */
export const loafNumber = ({ bakes, starts }: Kitchen, loaf: string): number => {
  const running = Object.values(bakes).find(({ context }) => context.loaves.includes(loaf));
  const of = running?.context ?? Object.values(starts).findLast((s) => s.loaves.includes(loaf));
  return (of?.loaves.indexOf(loaf) ?? -1) + 1;
};

/** A loaf's name: its number, with its bake's name where more than one runs. */
export const loafName = (kitchen: Kitchen, loaf: string, hour: (at: Instant) => string): string => {
  const load = loafNumber(kitchen, loaf);
  const start = Object.values(kitchen.starts).findLast(({ loaves }) => loaves.includes(loaf));
  if (!start || !areSeveral(kitchen)) return fill(potsPage.loaf, { load });
  return fill(potsPage.loafOf, { load, bake: bakeName(kitchen, start.bake, hour) });
};
