import { describe } from '../formula/read-fields.ts';
import { fields, id, instant, string } from './checks.ts';
import { DEEDS, whole } from './deed-check.ts';
import type { Fact } from './fact.ts';
import { formulaFault } from './formula-fault.ts';
import { position as positionCheck } from './position-check.ts';
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

const told = fields({ id, device: string, at: instant, raw: instant });

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

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
  const kind = (Object.keys(DEEDS) as Fact['kind'][]).find((one) => one === fact['kind']);
  if (!kind) return fail('fact.kind', Object.keys(DEEDS).join(', '), fact['kind']);
  const named = told(fact) ?? DEEDS[kind](fact);
  if (named) return fail(`fact${named.path}`, named.expected, named.got);
  if (kind === 'reading' || kind === 'correct') {
    const bounded = (machineVersion as number) > UNBOUNDED;
    const { reason } = readReading(fact['reading'], 'fact.reading', bounded);
    if (reason) return fail(reason.path, reason.expected, reason.got);
  }
  const fault =
    kind === 'starter'
      ? starterFault(fact)
      : kind === 'plan'
        ? planFault(fact['plan'])
        : kind === 'formula'
          ? formulaFault(fact['formula'])
          : kind === 'cut'
            ? cutFault(fact)
            : null;
  if (fault) return fail(`fact.${fault.path}`, fault.expected, fault.got);
  const record = upgrade(row, machineVersion as number) as LogRecord;
  const lacks = whole(record.fact);
  return lacks ? fail(`fact${lacks.path}`, lacks.expected, lacks.got) : { record };
}

/**
 * What a record's position lacks to be shown by it; null: nothing. Rows out of a file are checked so, and of the
 * log on the disk the last one: this program wrote them, and years of them are to open soon.
 */
export function positionFault({ position }: LogRecord): Unreadable | null {
  const lacks = positionCheck(position);
  return (
    lacks && {
      path: `position${lacks.path}`,
      expected: lacks.expected,
      got: describe(lacks.got),
    }
  );
}
