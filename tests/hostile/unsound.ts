/** Of more than this nothing is looked at: a reader that takes a megabyte is slow enough. Values. */
const LOOKED_AT = 20_000;

/**
 * What no reader may let in, wherever it stands: a number that cannot be reckoned with, or an object that is
 * no plain one and would answer to more than its own fields. Null where there is none.
 */
export function unsound(taken: unknown): string | null {
  const todo: (readonly [path: string, value: unknown])[] = [['', taken]];
  const seen = new Set<object>();
  while (todo.length > 0 && seen.size < LOOKED_AT) {
    const [path, value] = todo.pop()!;
    if (typeof value === 'number' && !Number.isFinite(value)) return `${value} at ${path}`;
    if (typeof value === 'function' || typeof value === 'symbol' || typeof value === 'bigint')
      return `a ${typeof value} at ${path}`;
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    seen.add(value);
    if (value instanceof ArrayBuffer || ArrayBuffer.isView(value)) {
      if (value instanceof Float32Array && value.some((one) => !Number.isFinite(one)))
        return `a sound's number that is none at ${path}`;
      continue;
    }
    if (value instanceof Map || value instanceof Set) {
      for (const one of value) todo.push([`${path}()`, one]);
      continue;
    }
    const shape = Object.getPrototypeOf(value) as unknown;
    if (shape !== Object.prototype && shape !== Array.prototype && shape !== null)
      return `no plain object at ${path}`;
    for (const [name, one] of Object.entries(value))
      todo.push([`${path}.${name.slice(0, 40)}`, one]);
  }
  return null;
}
