import type { BakeLooks } from '../day/laid/live-looks.ts';
import type { Instant } from '../units.ts';
import { live, waitNames } from './words/live.ts';
import { fill } from './fill.ts';
import { showBread } from './show-bread.ts';

/** Looks that are told at once; each new reading reckons them anew. */
const TOLD = 3;
const names: Readonly<Record<string, string>> = waitNames;

/**
 * 'Look at the dough at 14:10, then 14:50.', with the bread's name before it where there are several;
 * null where none is to come. `time` shows an instant.
 */
export function tellLooks(
  { batch, touch, looks }: BakeLooks,
  world: { readonly now: Instant; readonly many: boolean; time(at: Instant): string },
): string | null {
  const [first, ...then] = looks.filter(({ at }) => at > world.now).slice(0, TOLD);
  if (first === undefined) return null;
  const name = names[touch] ?? touch;
  const time = world.time(first.at);
  const line =
    then.length === 0
      ? fill(live.look, { name, time })
      : fill(live.looks, { name, time, until: then.map(({ at }) => world.time(at)).join(', ') });
  return world.many ? fill(live.ofBake, { bake: showBread(batch), part: line }) : line;
}
