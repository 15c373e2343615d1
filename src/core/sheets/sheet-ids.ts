/**
 * A short name for the program's use, out of a baker's words: letters, digits and hyphens, none of
 * those in `taken`, which it joins.
 *
 * @example
 * idOf('Süße Kirschen', 'filling', new Set()) // → 'suse-kirschen'
 * idOf('Rye', 'flour', new Set(['rye'])) // → 'rye-2'
 * idOf('麦', 'flour', new Set()) // → 'flour'
 * idOf('Constructor', 'flour', new Set()) // → 'constructor-2'
 */
export function idOf(words: string, otherwise: string, taken: Set<string>): string {
  const plain = words
    .normalize('NFD')
    .replace(/ß/g, 's')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .slice(0, 34)
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  const stem = plain === '' ? otherwise : plain;
  let id = stem;
  // Nor is it one of those that every object has.
  for (let n = 2; taken.has(id) || id in {}; n++) id = `${stem}-${n}`;
  taken.add(id);
  return id;
}
