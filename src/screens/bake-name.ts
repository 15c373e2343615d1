import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { several } from '../core/speech/en/several.ts';
import { said } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { shortName } from '../core/speech/short-name.ts';
import type { Instant } from '../core/units.ts';

type Hour = (at: Instant) => string;

const short = (kitchen: Kitchen, id: string): string =>
  shortName(kitchen.bakes[id]?.context.recipe.formula.name ?? '');

const isTwin = (kitchen: Kitchen, id: string): boolean =>
  Object.keys(kitchen.bakes).some(
    (other) => other !== id && short(kitchen, other) === short(kitchen, id),
  );

/** The instant a running bake began. */
const beganAt = (kitchen: Kitchen, id: string): Instant =>
  kitchen.starts[kitchen.bakes[id]?.context.start ?? '']?.at ?? 0;

/** Whether a bake has to be named at all. */
export const areSeveral = (kitchen: Kitchen): boolean => Object.keys(kitchen.bakes).length > 1;

/** A running bake's short name on the screen, with the hour it began where another has the same. */
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
