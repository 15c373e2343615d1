/** Why something is no plan: which field, what was expected there, what came. */
export interface PlanFault {
  readonly path: string;
  readonly expected: string;
  readonly got: unknown;
}

type Check = (value: unknown, path: string) => PlanFault | null;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const check =
  (expected: string, fits: (value: unknown) => boolean): Check =>
  (got, path) =>
    fits(got) ? null : { path, expected, got };

const text = check('a string', (value) => typeof value === 'string' && value !== '');
const number = check('a number', Number.isFinite);
const flag = check('true or false', (value) => typeof value === 'boolean');
const object = check('an object', isObject);
const whole = check(
  'a whole number from 1',
  (value) => Number.isInteger(value) && Number(value) > 0,
);
const minutes = check('0 or more', (value) => Number.isFinite(value) && Number(value) >= 0);

const orNull =
  (one: Check): Check =>
  (value, path) =>
    value === null ? null : one(value, path);
const maybe =
  (one: Check): Check =>
  (value, path) =>
    value === undefined ? null : one(value, path);

/** An object with fields, each checked by its own; others are let be. */
const fields =
  (shape: Readonly<Record<string, Check>>): Check =>
  (value, path) => {
    if (!isObject(value)) return { path, expected: 'an object', got: value };
    for (const [name, one] of Object.entries(shape)) {
      const fault = one(value[name], `${path}.${name}`);
      if (fault) return fault;
    }
    return null;
  };

const listOf =
  (one: Check, least = 0): Check =>
  (value, path) => {
    if (!Array.isArray(value) || value.length < least)
      return { path, expected: least > 0 ? `a list of ${least} or more` : 'a list', got: value };
    for (const [i, entry] of value.entries()) {
      const fault = one(entry, `${path}[${i}]`);
      if (fault) return fault;
    }
    return null;
  };

const tableOf =
  (one: Check): Check =>
  (value, path) => {
    if (!isObject(value)) return { path, expected: 'an object', got: value };
    return fields(Object.fromEntries(Object.keys(value).map((name) => [name, one])))(value, path);
  };

const span = fields({ name: maybe(text), from: number, to: number, canBend: maybe(flag) });

const bake = fields({
  name: text,
  recipe: object,
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

/**
 * Why a fact's plan is none; null where it is one. What its recipes hold is as it was pinned, and is not
 * read here, as that of a start is not.
 */
export const planFault = (value: unknown): PlanFault | null => plan(value, 'plan');
