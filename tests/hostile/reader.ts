import type { Seeded } from '../core/day/support/seeded.ts';
import { breakData, toJson } from './break-data.ts';
import { breakBytes, breakText } from './break-text.ts';

/** Why something was not taken, as every reader of ours says it; some say only that it was not. */
export interface Reason {
  readonly path: string;
  readonly expected: string;
  readonly got: unknown;
}

/**
 * What a reader made of something: it took it, it refused it and said why, or it held it for nothing
 * (`refused: null`), where that is all it says. `taken` is what it answers for, or what is shown of that: it
 * is held to be sound. A field that nobody knows may stay where it stood, and is no part of it.
 */
export type Made =
  { readonly taken: unknown } | { readonly refused: readonly (Reason | string)[] | null };

/** One reader of what comes from outside. */
export interface Reader {
  /** The file that holds it, and its name there: 'core/formula/read-formula.ts readFormula'. */
  readonly of: string;
  /** Something to read: broken by chance, or now and then as it was. */
  readonly make: (chance: Seeded) => unknown;
  /** Throws only where it is at fault. What it was handed is the same afterwards. */
  readonly read: (input: never) => Made | Promise<Made>;
  /** What may come of broken input: most are both taken and refused. */
  readonly ends?: 'both' | 'taken';
  /** Read again, what it took is taken again and is the same. */
  readonly again?: boolean;
  /** How much of the share of one reader it gets: those that unpack or open a house take their time. */
  readonly share?: number;
}

const MOSTLY = 0.97;

/** Broken nearly always: a good one now and then shows that it can be read at all. */
const broken = <T>(seeds: readonly T[], chance: Seeded, breaks: (seed: T) => T): T => {
  const seed = chance.of(seeds);
  return chance.chance(MOSTLY) ? breaks(seed) : structuredClone(seed);
};

/** Plain data as a disk has it. */
export const ofData =
  (...seeds: readonly unknown[]) =>
  (chance: Seeded): unknown =>
    broken(seeds, chance, (seed) => breakData(seed, chance, 'disk'));

/** Plain data as a file's text has it: broken before it was text, or after. */
export const ofJson =
  (...seeds: readonly unknown[]) =>
  (chance: Seeded): string => {
    const seed = chance.of(seeds);
    return chance.chance(0.75)
      ? toJson(broken([seed], chance, (one) => breakData(one, chance, 'file')))
      : breakText(JSON.stringify(seed), chance);
  };

export const ofText =
  (...seeds: readonly string[]) =>
  (chance: Seeded): string =>
    broken(seeds, chance, (seed) => breakText(seed, chance));

export const ofBytes =
  (...seeds: readonly Uint8Array<ArrayBuffer>[]) =>
  (chance: Seeded): Uint8Array<ArrayBuffer> =>
    broken(seeds, chance, (seed) => breakBytes(seed, chance));

/** What a reader that hands back `thing` or a reason made of it. */
export const either = (thing: unknown, reason: Reason | string | null | undefined): Made =>
  reason === null || reason === undefined ? { taken: thing } : { refused: [reason] };

/** The same of one that leaves out what it cannot read, and names it. */
export const leftOut = (thing: unknown, misread: readonly Reason[]): Made =>
  misread.length === 0 ? { taken: thing } : { refused: misread };

/** The same of one that only says that it is none. */
export const orNothing = (thing: unknown): Made =>
  thing === null || thing === undefined || thing === false ? { refused: null } : { taken: thing };

/** The same of one that looks at a value and tells its fault, if it has one: what has none stays as it is,
 * with whatever else stands beside what is looked at. */
export const fault =
  (one: (value: never) => Reason | null) =>
  (value: unknown): Made => {
    const reason = one(value as never);
    if (reason === null) return { taken: true };
    // What was found there may be the whole of it: its reader tells that to nobody.
    const { path, expected } = reason;
    return { refused: [{ path, expected, got: '' }] };
  };

/** Of what keeps fields that it does not know, those that it looks at. */
export const only = <T extends object>(of: T, names: readonly string[]): Partial<T> =>
  Object.fromEntries(Object.entries(of).filter(([name]) => names.includes(name))) as Partial<T>;
