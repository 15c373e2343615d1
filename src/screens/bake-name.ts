import type { Kitchen, StartFact } from '../../machines/kitchen/kitchen.ts';
import { several } from '../core/speech/words/several.ts';
import { said } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { showShort } from '../core/speech/show-bread.ts';
import type { Instant } from '../core/units.ts';
import { benches } from './oven-left.ts';

type Hour = (at: Instant) => string;

/** The start of a bake, running or over. */
const startOf = ({ bakes, starts }: Kitchen, id: string): StartFact | undefined =>
  starts[bakes[id]?.context.start ?? ''] ?? Object.values(starts).findLast((s) => s.bake === id);

const short = (kitchen: Kitchen, id: string): string =>
  showShort(startOf(kitchen, id)?.recipe.formula.name ?? '');

const isTwin = (kitchen: Kitchen, id: string): boolean =>
  benches(kitchen).some((other) => other !== id && short(kitchen, other) === short(kitchen, id));

/** The instant a bake began. */
const beganAt = (kitchen: Kitchen, id: string): Instant => startOf(kitchen, id)?.at ?? 0;

/** Whether a bake has to be named at all. */
export const areSeveral = (kitchen: Kitchen): boolean => benches(kitchen).length > 1;

/** A bake's short name on the screen, with the hour it began where another has the same. */
export const bakeName = (kitchen: Kitchen, id: string, hour: Hour): string =>
  isTwin(kitchen, id)
    ? fill(several.twin, { bake: short(kitchen, id), time: hour(beganAt(kitchen, id)) })
    : short(kitchen, id);

/** The same in the air: 'Cherry bake', 'Cherry bake of seventeen thirty'. */
export const bakeSaid = (kitchen: Kitchen, id: string, hour: Hour): string =>
  isTwin(kitchen, id)
    ? fill(several.twinSaid, {
        bake: short(kitchen, id),
        ...said({ time: hour(beganAt(kitchen, id)) }),
      })
    : fill(several.said, { bake: short(kitchen, id) });

/** A sentence of one bake's, begun with its name where more than one runs. */
export const sayFor = (kitchen: Kitchen, id: string, words: string, hour: Hour): string =>
  areSeveral(kitchen)
    ? fill(several.sentence, { bake: bakeSaid(kitchen, id, hour), words })
    : words;
