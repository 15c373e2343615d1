import {
  amount,
  check,
  fields,
  flag,
  instant,
  listOf,
  maybe,
  orNull,
  tableOf,
  text,
  within,
  type Fault,
} from './checks.ts';
import { recipe } from './recipe-check.ts';

const whole = check(
  'a whole number from 1',
  (value) => Number.isInteger(value) && Number(value) > 0,
);
const minutes = check('0 or more', (value) => amount(value) === null && Number(value) >= 0);

const span = fields({ name: maybe(text), from: instant, to: instant, canBend: maybe(flag) });

const bake = fields({
  name: text,
  recipe,
  due: orNull(instant),
  startAt: orNull(instant),
  bake: orNull(text),
  pins: tableOf(instant),
});

const ask = fields({
  bakes: listOf(bake, 1),
  kitchen: amount,
  belief: fields({ mean: amount, sd: amount }),
  away: listOf(span),
  taken: maybe(listOf(fields({ change: text }))),
});

const touch = fields({
  batch: text,
  name: text,
  at: instant,
  hands: minutes,
  earliest: instant,
  latest: instant,
  fineUntil: instant,
  lastPossible: instant,
  choice: maybe(text),
  frozen: flag,
});

const plan = fields({
  id: text,
  sequence: whole,
  ask,
  touches: listOf(touch, 1),
  ready: listOf(fields({ batch: text, at: instant })),
});

/** Why a fact's plan is none; null where it is one. Its recipes are checked as that of a start is. */
export const planFault = (value: unknown): Fault | null => {
  const fault = plan(value);
  return fault && within('plan', fault);
};
