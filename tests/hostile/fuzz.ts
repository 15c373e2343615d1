import { isDeepStrictEqual } from 'node:util';
import { seeded } from '../core/day/support/seeded.ts';
import { unsound } from './unsound.ts';
import type { Made, Reader, Reason } from './reader.ts';

/** What came of so many inputs to one reader. */
export interface Fuzzed {
  readonly of: string;
  readonly inputs: number;
  readonly taken: number;
  readonly refused: number;
  /** Places that it told of, the digits left out: how far into its input it came. */
  readonly places: ReadonlySet<string>;
  /** What is its fault, each with the seed and the number that make it again. */
  readonly faults: readonly string[];
  /** Work for the one that took longest, ms. */
  readonly longest: number;
}

/** Against what hangs, and no measure of anything: work of this process, not of the machine beside it, ms. */
const PATIENCE = 3_000;
const worked = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
/** A reason stands on the screen: longer nobody reads it, and no file writes its own there. Characters. */
const LONGEST_REASON = 400;

const SHARED = [Object, Array, String, Number, Function, Map, Uint8Array, Promise, RegExp].map(
  ({ prototype }) => prototype as object,
);
const shapes = (): string => SHARED.map((one) => Reflect.ownKeys(one).map(String).join()).join('|');
const SHAPES = shapes();

/** Nothing of it can be changed without a throw, but for what is in bytes and maps: those are held against a copy. */
function frozen(input: unknown): void {
  const todo: unknown[] = [input];
  const seen = new Set<object>();
  while (todo.length > 0) {
    const one = todo.pop();
    if (typeof one !== 'object' || one === null || seen.has(one) || ArrayBuffer.isView(one))
      continue;
    seen.add(one);
    Object.freeze(one);
    todo.push(...(one instanceof Map ? [...one.values()] : Object.values(one)).slice(0, 5_000));
  }
}

const bytesIn = (input: unknown): Uint8Array | null =>
  input instanceof Uint8Array ? input.slice() : null;

const isTold = (reason: Reason | string): boolean => {
  const texts =
    typeof reason === 'string' ? [reason] : [reason.expected, reason.path, String(reason.got)];
  return texts[0] !== '' && texts.every((text) => text.length <= LONGEST_REASON);
};
const placeOf = (reason: Reason | string): string =>
  (typeof reason === 'string' ? reason : `${reason.path}: ${reason.expected}`)
    .replace(/\d+/g, '#')
    .slice(0, 120);

const shown = (input: unknown): string => {
  try {
    return (JSON.stringify(input) ?? String(input)).slice(0, 300);
  } catch (error) {
    return `what cannot be written (${String(error).slice(0, 60)})`;
  }
};

/** The input of this seed and number: a red one is made again by them. */
export const inputOf = (reader: Reader, seed: number, n: number): unknown =>
  reader.make(seeded((Math.imul(seed, 0x9e3779b1) ^ Math.imul(n + 1, 0x85ebca6b)) >>> 0));

const readOf = (reader: Reader, input: unknown): Made | Promise<Made> =>
  reader.read(input as never);

async function faultOf(reader: Reader, made: Made): Promise<string | null> {
  if (shapes() !== SHAPES || 'polluted' in {}) return 'what all objects share has changed';
  if ('refused' in made)
    return made.refused?.every(isTold) === false ? 'no reason that can be shown' : null;
  const bad = unsound(made.taken);
  if (bad !== null) return `what it took holds ${bad}`;
  if (reader.again !== true) return null;
  const again = await readOf(reader, made.taken);
  if ('refused' in again) return `what it took it refuses: ${JSON.stringify(again.refused)}`;
  return isDeepStrictEqual(again.taken, made.taken) ? null : 'what it took it reads as another';
}

/** Has a reader read so many inputs by chance, each within so much work, ms. */
export async function fuzz(
  reader: Reader,
  inputs: number,
  seed: number,
  patience = PATIENCE,
): Promise<Fuzzed> {
  let [taken, refused, longest] = [0, 0, 0];
  const faults: string[] = [];
  const places = new Set<string>();
  for (let n = 0; n < inputs; n += 1) {
    const input = inputOf(reader, seed, n);
    const was = bytesIn(input);
    const say = (fault: string): void =>
      void faults.push(`${reader.of}, seed ${seed}, ${n}: ${fault}. ${shown(input)}`);
    frozen(input);
    const began = worked();
    try {
      const made = await readOf(reader, input);
      if ('taken' in made) taken += 1;
      else {
        refused += 1;
        for (const reason of made.refused ?? []) places.add(placeOf(reason));
      }
      const fault = await faultOf(reader, made);
      if (fault !== null) say(fault);
    } catch (error) {
      const { stack } = error as Error;
      say(`thrown: ${stack?.split('\n').slice(0, 4).join(' ') ?? String(error)}`);
    }
    const took = worked() - began;
    longest = Math.max(longest, took);
    if (took > patience) say(`${Math.round(took)} ms`);
    if (was !== null && !isDeepStrictEqual(was, input)) say('its input was changed');
  }
  return { of: reader.of, inputs, taken, refused, places, faults, longest };
}
