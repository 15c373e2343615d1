const filled = (value: object): number => {
  let count = 0;
  for (const inner of Object.values(value)) if (inner !== undefined) count += 1;
  return count;
};

/**
 * Whether two plain data say the same: keys in another order, and keys that hold nothing, make no
 * difference. No text is made of either: a long log compares thousands of positions.
 */
export const samePlain = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return (
      Array.isArray(a) &&
      Array.isArray(b) &&
      a.length === b.length &&
      a.every((inner, i) => samePlain(inner, b[i]))
    );
  }
  const [left, right] = [a, b] as Record<string, unknown>[];
  for (const key of Object.keys(a)) {
    if (left![key] !== undefined && !(Object.hasOwn(b, key) && samePlain(left![key], right![key])))
      return false;
  }
  return filled(a) === filled(b);
};
