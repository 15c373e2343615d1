import {
  amount,
  fields,
  id,
  instant,
  listOf,
  maybe,
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
    kitchen: maybe(orNull(amount)),
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
    holds: maybe(tableOf(amount)),
    was: maybe(instant),
    text: maybe(string),
    grams: maybe(amount),
    seen: maybe(amount),
  }),
  reading: fields({ bake: id, reading: object }),
  correct: fields({ target: id, reading: object }),
  heard: fields({ call: string }),
  snoozed: fields({ call: string, until: instant }),
  timer: fields({ timer: id, name: string, until: instant, call: string }),
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

const belief = fields({ mean: amount, sd: amount });

const results = listOf(
  fields({
    who: id,
    stage: id,
    since: instant,
    marks: tableOf(instant),
    belief: maybe(belief),
    doubt: maybe(id),
    mixed: maybe(fields({ reckoned: amount, measured: amount })),
    offsets: maybe(listOf(amount)),
    cored: maybe(object),
    cores: maybe(listOf(object)),
    weighed: maybe(fields({ dough: amount, vessel: id })),
    weighIns: maybe(listOf(object)),
    vigours: maybe(
      listOf(fields({ start: id, at: instant, flours: object, mean: amount, sd: amount })),
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
