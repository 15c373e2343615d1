import {
  check,
  fields,
  flag,
  listOf,
  maybe,
  number,
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
const minutes = check('0 or more', (value) => Number.isFinite(value) && Number(value) >= 0);

const span = fields({ name: maybe(text), from: number, to: number, canBend: maybe(flag) });

const bake = fields({
  name: text,
  recipe,
  due: orNull(number),
  startAt: orNull(number),
  bake: orNull(text),
  pins: tableOf(number),
});

const ask = fields({
  bakes: listOf(bake, 1),
  kitchen: number,
  belief: fields({ mean: number, sd: number }),
  away: listOf(span),
  taken: maybe(listOf(fields({ change: text }))),
});

const touch = fields({
  batch: text,
  name: text,
  at: number,
  hands: minutes,
  earliest: number,
  latest: number,
  fineUntil: number,
  lastPossible: number,
  choice: maybe(text),
  frozen: flag,
});

const plan = fields({
  id: text,
  sequence: whole,
  ask,
  touches: listOf(touch, 1),
  ready: listOf(fields({ batch: text, at: number })),
});

/** Why a fact's plan is none; null where it is one. Its recipes are checked as that of a start is. */
export const planFault = (value: unknown): Fault | null => {
  const fault = plan(value);
  return fault && within('plan', fault);
};
