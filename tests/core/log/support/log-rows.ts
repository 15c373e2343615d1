import type { Deed, Fact } from '../../../../src/core/records/fact.ts';
import type { BakePlace, Position } from '../../../../src/core/records/position.ts';
import type { LogRecord } from '../../../../src/core/records/record.ts';
import { DAY } from '../../../../src/core/units.ts';
import { makeRow } from '../../../fakes/records.ts';
import { RECIPE } from '../../../machines/support/recipe.ts';

/** When the first of them is: 30 April 2031, 23:00 UTC. */
export const FROM = Date.UTC(2031, 3, 30, 23);

/** Where a kitchen stands in which bakes with these starts run, by their names. */
export const standingAt = (now: number, bakes: Readonly<Record<string, string>>): Position => ({
  ...makeRow(1).position,
  now,
  bakes: Object.fromEntries(
    Object.entries(bakes).map(([bake, start]) => [bake, { start } as BakePlace]),
  ),
});

/**
 * A log of such deeds, one a day, the first with the id f0 unless told otherwise. Where its kitchen stands
 * after each is told by starts and ends alone.
 */
export function rowsOf(deeds: readonly Deed[], { from = 0, id = 'f' } = {}): readonly LogRecord[] {
  let running: Readonly<Record<string, string>> = {};
  return deeds.map((deed, n) => {
    const at = FROM + (from + n) * DAY;
    const fact = { ...deed, id: `${id}${from + n}`, device: 'counter', at, raw: at } as Fact;
    if (deed.kind === 'start') running = { ...running, [deed.bake]: fact.id };
    if (deed.kind === 'press' && (deed.act === 'noted' || deed.act === 'ended')) {
      const { [deed.who]: _, ...rest } = running;
      running = rest;
    }
    if (deed.kind === 'jump')
      running = Object.fromEntries(
        Object.entries(deed.position.bakes).map(([bake, { start }]) => [bake, start]),
      );
    return { ...makeRow(from + n + 1), fact, position: standingAt(at, running) };
  });
}

export const begun = (bake: string, name = 'Lane wheat', loaves = 1): Deed => ({
  kind: 'start',
  bake,
  loaves: Array.from({ length: loaves }, (_, n) => `${bake}.${n + 1}`),
  from: 'read.plan',
  recipe: { ...RECIPE, formula: { ...RECIPE.formula, name, id: name } },
  kitchen: 22,
});
export const noted = (who: string, text?: string): Deed => ({
  kind: 'press',
  who,
  act: 'noted',
  ...(text === undefined ? {} : { text }),
});
export const back = (target: string): Deed => ({ kind: 'takeBack', target });
/** Its loaf was cut, and said so. */
export const cut = (
  target: string,
  says: 'well' | 'look' | 'under' | 'over' | 'skin',
  sure: 'likely' | 'hard' = 'likely',
): Deed => ({
  kind: 'cut',
  target,
  answers: {},
  read: {
    says: says === 'well' || says === 'look' ? says : 'causes',
    causes: says === 'well' || says === 'look' ? [] : [{ cause: says, sure }],
    change: null,
    because: [],
    model: 'test',
  },
});
