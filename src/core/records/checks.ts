/** Why something is not what it has to be: where in it, what was expected there, what came. */
export interface Fault {
  /** Within what was checked: '' is all of it, '.loaves[1]' the second of its loaves. */
  readonly path: string;
  readonly expected: string;
  readonly got: unknown;
}

/** What a value has to be; null: it is. No path is made where nothing is wrong: a log has many rows. Never throws. */
export type Check = (value: unknown) => Fault | null;

type Table = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Table =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The same fault, told from further out. */
export const within = (at: string, fault: Fault): Fault => ({ ...fault, path: at + fault.path });

export const check =
  (expected: string, fits: (value: unknown) => boolean): Check =>
  (got) =>
    fits(got) ? null : { path: '', expected, got };

export const string = check('a string', (value) => typeof value === 'string');
export const text = check('a string', (value) => typeof value === 'string' && value !== '');
/** What things are found by: none of the names that every object has, for there nobody put it. */
export const id: Check = (value) =>
  text(value) ??
  ((value as string) in {} ? { path: '', expected: 'a name of its own', got: value } : null);
export const number = check('a number', Number.isFinite);
/** Of grams, minutes, percent: far more than any kitchen has, and nothing that arithmetic turns into no number. */
const MOST = 1e9;
export const amount = check(
  'a number within a thousand million',
  (value) => typeof value === 'number' && Math.abs(value) <= MOST,
);
/** The last instant there is, ms (ECMA-262, Time Values): later or sooner no clock shows. */
export const LAST_INSTANT = 8.64e15;
export const instant = check(
  'an instant',
  (value) => typeof value === 'number' && Math.abs(value) <= LAST_INSTANT,
);
export const flag = check('true or false', (value) => typeof value === 'boolean');
export const object = check('an object', isObject);

export const orNull =
  (one: Check): Check =>
  (value) =>
    value === null ? null : one(value);
export const maybe =
  (one: Check): Check =>
  (value) =>
    value === undefined ? null : one(value);

/** An object with fields, each checked by its own; others are let be. */
export const fields = (shape: Readonly<Record<string, Check>>): Check => {
  const checks = Object.entries(shape);
  return (value) => {
    if (!isObject(value)) return { path: '', expected: 'an object', got: value };
    for (const [name, one] of checks) {
      const fault = one(Object.hasOwn(value, name) ? value[name] : undefined);
      if (fault) return within(`.${name}`, fault);
    }
    return null;
  };
};

export const listOf =
  (one: Check, least = 0): Check =>
  (value) => {
    if (!Array.isArray(value) || value.length < least)
      return {
        path: '',
        expected: least > 0 ? `a list of ${least} or more` : 'a list',
        got: value,
      };
    for (let i = 0; i < value.length; i += 1) {
      const fault = one(value[i]);
      if (fault) return within(`[${i}]`, fault);
    }
    return null;
  };

/** Of a name out of a file no more than this stands in a reason. */
const SHOWN = 40;

/** An object by names of its own, each of its values checked alike. */
export const tableOf =
  (one: Check): Check =>
  (value) => {
    if (!isObject(value)) return { path: '', expected: 'an object', got: value };
    for (const name of Object.keys(value)) {
      const fault = id(name) ?? one(value[name]);
      if (fault) return within(`.${name.slice(0, SHOWN)}`, fault);
    }
    return null;
  };
