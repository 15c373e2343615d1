/**
 * Under which key a photo or a spoken note lies: its bake's start, '/' and its own id.
 *
 * @example
 * keepsakeKey('f-1', 'a') // → 'f-1/a'
 */
export const keepsakeKey = (start: string, id: string): string => `${start}/${id}`;

/**
 * The start and the own id in such a key; null: it is none.
 *
 * @example
 * readKeepsakeKey('f-1/a') // → { start: 'f-1', id: 'a' }
 */
export function readKeepsakeKey(
  key: unknown,
): { readonly start: string; readonly id: string } | null {
  if (typeof key !== 'string') return null;
  const at = key.lastIndexOf('/');
  const [start, id] = [key.slice(0, Math.max(0, at)), key.slice(at + 1)];
  return start === '' || id === '' ? null : { start, id };
}
