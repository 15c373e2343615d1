import type { Kitchen } from '../../../../machines/kitchen/kitchen.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import { said } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { Instant } from '../../../core/units.ts';
import { sayFor } from '../../bake-name.ts';
import { loafNumber } from './loaf-name.ts';

/** Why another loaf is looked at now: the one before was not ready, and goes in last. Else null. */
export function setAsideSaid(
  kitchen: Kitchen,
  who: string,
  stage: string,
  hour: (at: Instant) => string,
): string | null {
  const { waiting, lanes } = kitchen.oven.context;
  const last = kitchen.standing.findLast(({ kind }) => kind !== 'heard');
  const wasPoked = last?.kind === 'press' && last.who === 'oven' && last.act === 'pokeNotYet';
  if (who !== 'oven' || stage !== 'poke' || lanes === undefined || !wasPoked) return null;
  // It went behind all that wait.
  const loaf = waiting.at(-1);
  const start = Object.values(kitchen.starts).findLast(({ loaves }) => loaves.includes(loaf ?? ''));
  if (loaf === undefined || start === undefined || waiting.length < 2) return null;
  const words = fill(potsPage.slow, said({ load: loafNumber(kitchen, loaf) }));
  return sayFor(kitchen, start.bake, words, hour);
}
