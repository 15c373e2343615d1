import { describe } from '../formula/read-fields.ts';
import type { Fact } from './fact.ts';
import { formulaFault } from './formula-fault.ts';
import { cutFault } from './read-cut.ts';
import { planFault } from './read-plan.ts';
import { readReading } from './read-reading.ts';
import { starterFault } from './read-starter.ts';
import type { LogRecord } from './record.ts';
import { upgrade } from './upgrade.ts';

/** Why a row is not a record: where, what was expected, what came. */
export interface Unreadable {
  readonly path: string;
  readonly expected: string;
  readonly got: string;
}

/** Rows of this machine version and before kept any number that was keyed in twice. */
const UNBOUNDED = 1;

const KINDS: readonly Fact['kind'][] = [
  'start',
  'press',
  'reading',
  'correct',
  'heard',
  'snoozed',
  'timer',
  'timerOff',
  'starter',
  'plan',
  'planOff',
  'formula',
  'formulaOff',
  'cut',
  'takeBack',
  'jump',
];

type Type = 'string' | 'object' | 'instant';

/** What each kind cannot do without. */
const NEEDS: Readonly<Record<Fact['kind'], readonly (readonly [string, Type])[]>> = {
  start: [
    ['bake', 'string'],
    ['loaves', 'object'],
    ['from', 'string'],
    ['recipe', 'object'],
  ],
  press: [
    ['who', 'string'],
    ['act', 'string'],
  ],
  reading: [
    ['bake', 'string'],
    ['reading', 'object'],
  ],
  correct: [
    ['target', 'string'],
    ['reading', 'object'],
  ],
  heard: [['call', 'string']],
  snoozed: [
    ['call', 'string'],
    ['until', 'instant'],
  ],
  timer: [
    ['timer', 'string'],
    ['name', 'string'],
    ['until', 'instant'],
    ['call', 'string'],
  ],
  timerOff: [['timer', 'string']],
  starter: [['did', 'string']],
  plan: [['plan', 'object']],
  planOff: [['plan', 'string']],
  formula: [['formula', 'object']],
  formulaOff: [['formula', 'string']],
  cut: [
    ['target', 'string'],
    ['answers', 'object'],
    ['read', 'object'],
  ],
  takeBack: [['target', 'string']],
  jump: [['position', 'object']],
};

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const FITS: Readonly<Record<Type, (value: unknown) => boolean>> = {
  string: (value) => typeof value === 'string',
  object: isObject,
  instant: Number.isFinite,
};
const EXPECTED: Readonly<Record<Type, string>> = {
  string: 'a string',
  object: 'an object',
  instant: 'an instant',
};

/**
 * Reads one row of a log, from the store or a file. Refuses by name what a newer version wrote,
 * so that it is never half-read; a row of an older version comes back as this one would have
 * written it.
 *
 * @param newest the machine version of this program
 */
export function readRecord(
  row: unknown,
  newest: number,
): { readonly record: LogRecord } | { readonly record: null; readonly reason: Unreadable } {
  const fail = (path: string, expected: string, got: unknown) => ({
    record: null,
    reason: { path, expected, got: describe(got) },
  });
  if (!isObject(row)) return fail('', 'a record', row);
  const { seq, machineVersion, fact, position } = row;
  if (!Number.isInteger(seq) || (seq as number) < 1)
    return fail('seq', 'a whole number from 1', seq);
  if (!Number.isInteger(machineVersion)) {
    return fail('machineVersion', 'a whole number', machineVersion);
  }
  if ((machineVersion as number) > newest) {
    return fail('machineVersion', `at most ${newest}`, machineVersion);
  }
  if (!isObject(position)) return fail('position', 'a position', position);
  if (!isObject(fact)) return fail('fact', 'a fact', fact);
  if (!KINDS.includes(fact['kind'] as Fact['kind'])) {
    return fail('fact.kind', KINDS.join(', '), fact['kind']);
  }
  for (const name of ['id', 'device'] as const) {
    if (typeof fact[name] !== 'string') return fail(`fact.${name}`, 'a string', fact[name]);
  }
  for (const name of ['at', 'raw'] as const) {
    if (!Number.isFinite(fact[name])) return fail(`fact.${name}`, 'an instant', fact[name]);
  }
  for (const [name, type] of NEEDS[fact['kind'] as Fact['kind']]) {
    if (!FITS[type](fact[name])) return fail(`fact.${name}`, EXPECTED[type], fact[name]);
  }
  if (fact['kind'] === 'reading' || fact['kind'] === 'correct') {
    const bounded = (machineVersion as number) > UNBOUNDED;
    const { reason } = readReading(fact['reading'], 'fact.reading', bounded);
    if (reason) return fail(reason.path, reason.expected, reason.got);
  }
  const fault =
    fact['kind'] === 'starter'
      ? starterFault(fact)
      : fact['kind'] === 'plan'
        ? planFault(fact['plan'])
        : fact['kind'] === 'formula'
          ? formulaFault(fact['formula'])
          : fact['kind'] === 'cut'
            ? cutFault(fact)
            : null;
  if (fault) return fail(`fact.${fault.path}`, fault.expected, fault.got);
  return { record: upgrade(row, machineVersion as number) as LogRecord };
}
