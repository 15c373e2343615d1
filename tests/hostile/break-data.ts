import type { Seeded } from '../core/day/support/seeded.ts';
import { HOSTILE_TEXTS, INHERITED } from './texts.ts';

/** What data may hold that JSON cannot write: a disk has all of it, a file none. */
export type Where = 'disk' | 'file';

/**
 * Numbers of JSON that `JSON.stringify` writes as null or as another: these stand for them until it is text.
 * A deep nest too, for it would be written by a function that calls itself.
 */
export const STANDS_FOR: Readonly<Record<string, string>> = {
  '\u0001huge': '1e999',
  '\u0001least': '-1e999',
  '\u0001zero': '-0',
  '\u0001deep': `${'['.repeat(20_000)}${']'.repeat(20_000)}`,
  '\u0001deeper': `${'{"a":'.repeat(9_000)}1${'}'.repeat(9_000)}`,
};

const MEGABYTE = 'x'.repeat(1_000_000);

const nested = (deep: number): unknown => {
  let value: unknown = 1;
  for (let n = 0; n < deep; n += 1) value = n % 2 === 0 ? [value] : { a: value };
  return value;
};

const itself = (): unknown => {
  const ring: Record<string, unknown> = { a: 1 };
  ring['ring'] = ring;
  return ring;
};

const NUMBERS: readonly number[] = [
  ...[0, 1, -1, 0.1, 1.5, 2, 7, 59, 1439, 1440, 9_999, 2 ** 31, 2 ** 32, 2 ** 53, -(2 ** 53)],
  ...[1e20, 1e21, 1e300, 1.8e308, 1e308, -1e308, 5e-324, 8.64e15, 8.64e15 + 1, 1_935_000_000_000],
];

const PLAIN: readonly (() => unknown)[] = [
  () => null,
  () => true,
  () => false,
  () => '',
  () => [],
  () => ({}),
  () => [[]],
  () => [null],
  () => ({ toString: 1, valueOf: 1 }),
  () => ({ length: 3 }),
  () => JSON.parse('{"__proto__":{"polluted":1}}') as unknown,
  () => ({ constructor: { prototype: { polluted: 1 } } }),
  () => Array.from({ length: 3_000 }, (_, n) => n),
];
const OF_A_DISK: readonly (() => unknown)[] = [
  () => undefined,
  () => Number.NaN,
  () => -0,
  () => Number.POSITIVE_INFINITY,
  () => 12n,
  () => new Date(Number.NaN),
  () => new Map([['__proto__', 1]]),
  () => new Set([1]),
  () => Uint8Array.of(1, 2, 3),
  () => new Float32Array(4),
  () => new ArrayBuffer(8),
  () => new Array<unknown>(5),
  () => nested(20_000),
  itself,
  () => Object.create(null) as unknown,
];

/** Any value at all that a file (as its text stands for it) or a disk can hold. */
export function anyValue(chance: Seeded, where: Where): unknown {
  const n = chance.next();
  if (n < 0.3) return chance.of(NUMBERS);
  if (n < 0.55) return chance.of(HOSTILE_TEXTS);
  if (n < 0.57) return MEGABYTE;
  if (n < 0.8) return chance.of(PLAIN)();
  return where === 'disk' ? chance.of(OF_A_DISK)() : chance.of(Object.keys(STANDS_FOR));
}

type Holder = Record<string, unknown> | unknown[] | Map<unknown, unknown>;

const isHolder = (value: unknown): value is Holder =>
  typeof value === 'object' && value !== null && !ArrayBuffer.isView(value);

const keysOf = (holder: Holder): unknown[] =>
  holder instanceof Map ? [...holder.keys()] : Object.keys(holder);
const at = (holder: Holder, key: unknown): unknown =>
  holder instanceof Map ? holder.get(key) : (holder as Record<string, unknown>)[String(key)];
function put(holder: Holder, key: unknown, value: unknown): void {
  if (holder instanceof Map) holder.set(key, value);
  // No list that JSON or a disk holds has a field of its own by such a name.
  else if (Array.isArray(holder) && !/^\d+$/.test(String(key))) holder.push(value);
  // Its own, whatever it is called: a plain assignment to `__proto__` would make none.
  else
    Object.defineProperty(holder, String(key), {
      ...{ value, enumerable: true, configurable: true, writable: true },
    });
}
function drop(holder: Holder, key: unknown): void {
  if (holder instanceof Map) holder.delete(key);
  else if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[String(key)];
}

/** The same thing as another type. */
function asAnother(value: unknown, chance: Seeded): unknown {
  if (typeof value === 'number') return chance.of([String(value), [value], { value }, value > 0]);
  if (typeof value === 'string') return chance.of([[...value.slice(0, 50)], [value], { value }, 7]);
  if (Array.isArray(value)) return chance.of([{ ...value }, value[0], value.length, [value]]);
  if (typeof value === 'object' && value !== null)
    return chance.of([Object.entries(value), [value], JSON.stringify(Object.keys(value)), null]);
  return String(value);
}

/** The same type, but not what stood there. */
function otherwise(value: unknown, chance: Seeded): unknown {
  if (typeof value === 'number')
    return chance.of([-value, value + 1, value * 1e9, value / 3, chance.of(NUMBERS)]);
  if (typeof value === 'boolean') return !value;
  if (typeof value !== 'string') return value;
  const text = chance.of(HOSTILE_TEXTS);
  const cut = chance.whole(0, value.length);
  return chance.of([
    ...[text, text + value, value + text, value.slice(0, cut), value.toUpperCase()],
    value.slice(0, cut) + text + value.slice(cut),
  ]);
}

function breakAt(holder: Holder, key: unknown, chance: Seeded, where: Where): void {
  const value = at(holder, key);
  const how = chance.whole(0, 9);
  const keys = keysOf(holder);
  if (how <= 1) put(holder, key, otherwise(value, chance));
  else if (how === 2) put(holder, key, asAnother(value, chance));
  else if (how <= 4) put(holder, key, anyValue(chance, where));
  else if (how === 5) drop(holder, key);
  else if (how === 6) put(holder, chance.of(INHERITED), anyValue(chance, where));
  else if (how === 7) {
    const other = chance.of(keys);
    const held = at(holder, other);
    put(holder, other, value);
    put(holder, key, held);
  } else if (how === 8 && Array.isArray(holder)) {
    const times = chance.of([1, 1, 1, 30, 2_500]);
    for (let n = 0; n < times; n += 1) holder.push(value);
  } else {
    drop(holder, key);
    const named = [...INHERITED, String(key).toUpperCase(), '0', chance.of(HOSTILE_TEXTS)];
    put(holder, chance.chance(0.02) ? MEGABYTE : chance.of(named), value);
  }
}

/** Data with one to three of its places broken, however deep they lie; at times all of it is another. */
export function breakData(seed: unknown, chance: Seeded, where: Where): unknown {
  const value = structuredClone(seed);
  if (!isHolder(value))
    return chance.chance(0.5) ? otherwise(value, chance) : anyValue(chance, where);
  if (chance.chance(0.03)) return anyValue(chance, where);
  for (let n = chance.of([1, 1, 1, 2, 3]); n > 0; n -= 1) {
    let holder: Holder = value;
    for (;;) {
      const inner: readonly unknown[] = keysOf(holder)
        .map((key) => at(holder, key))
        .filter(isHolder);
      if (inner.length === 0 || chance.chance(0.25)) break;
      holder = chance.of(inner) as Holder;
    }
    const keys = keysOf(holder);
    if (keys.length === 0) put(holder, 'a', anyValue(chance, where));
    else breakAt(holder, chance.of(keys), chance, where);
  }
  return value;
}

/** A value of a file as its text, what JSON cannot write put in. */
export function toJson(value: unknown): string {
  const text = JSON.stringify(value) ?? '';
  return text.replace(/"\\u0001([a-z]+)"/g, (_, name: string) => STANDS_FOR[`\u0001${name}`]!);
}
