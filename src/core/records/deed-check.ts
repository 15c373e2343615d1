import {
  fields,
  id,
  listOf,
  maybe,
  number,
  object,
  orNull,
  string,
  tableOf,
  text,
} from './checks.ts';
import type { Check } from './checks.ts';
import type { Fact } from './fact.ts';
import { position } from './position-check.ts';
import { recipe } from './recipe-check.ts';

const ids = listOf(id);

/** What each kind cannot do without, and what may stand beside it. Some are read further by readers of their own. */
export const DEEDS: Readonly<Record<Fact['kind'], Check>> = {
  start: fields({
    bake: id,
    loaves: ids,
    from: id,
    recipe: object,
    kitchen: maybe(orNull(number)),
    planned: maybe(fields({ plan: text, name: text })),
  }),
  press: fields({
    who: id,
    act: id,
    item: maybe(string),
    value: maybe(string),
    loaves: maybe(ids),
    lane: maybe(id),
    lanes: maybe(ids),
    holds: maybe(tableOf(number)),
    was: maybe(number),
    text: maybe(string),
    grams: maybe(number),
    seen: maybe(number),
  }),
  reading: fields({ bake: id, reading: object }),
  correct: fields({ target: id, reading: object }),
  heard: fields({ call: string }),
  snoozed: fields({ call: string, until: number }),
  timer: fields({ timer: id, name: string, until: number, call: string }),
  timerOff: fields({ timer: id }),
  starter: fields({ did: id }),
  plan: fields({ plan: object }),
  planOff: fields({ plan: text }),
  formula: fields({ formula: object }),
  formulaOff: fields({ formula: id }),
  cut: fields({ target: string, answers: object, read: object }),
  takeBack: fields({ target: id }),
  jump: fields({ position: object }),
};

const belief = fields({ mean: number, sd: number });

const results = listOf(
  fields({
    who: id,
    stage: id,
    since: number,
    marks: tableOf(number),
    belief: maybe(belief),
    doubt: maybe(id),
    mixed: maybe(fields({ reckoned: number, measured: number })),
    offsets: maybe(listOf(number)),
    cored: maybe(object),
    cores: maybe(listOf(object)),
    weighed: maybe(fields({ dough: number, vessel: id })),
    weighIns: maybe(listOf(object)),
    vigours: maybe(
      listOf(fields({ start: id, at: number, flours: object, mean: number, sd: number })),
    ),
    model: string,
  }),
);

const startParts = fields({ recipe });
const jumpParts = fields({ position });
const anyParts = fields({ results: maybe(results) });

/** What the fact of a row has once it is lifted to what is written today: rows of old had less of it. */
export const whole: Check = (fact) => {
  const { kind } = fact as { kind?: unknown };
  const parts = kind === 'start' ? startParts(fact) : kind === 'jump' ? jumpParts(fact) : null;
  return parts ?? anyParts(fact);
};
