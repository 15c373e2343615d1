/** Letters to change, add or leave out to make one of the other. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1)
      next.push(
        Math.min(next[j - 1]! + 1, row[j]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)),
      );
    row = next;
  }
  return row.at(-1)!;
}

/** Written otherwise and spoken alike: no ear tells them apart. */
const ALIKE: readonly (readonly [RegExp, string])[] = [
  [/\bto\b/g, 'two'],
  [/\bfor\b/g, 'four'],
  [/\bflour\b/g, 'flower'],
];
const asHeard = (words: string): string =>
  ALIKE.reduce((said, [from, to]) => said.replace(from, to), words).replaceAll('-', ' ');

/** Of all of them those that are not spoken like this one, and the nearest of those by their letters. */
export const nearTwins = (words: string, all: readonly string[], count: number): string[] =>
  all
    .filter((other) => asHeard(other) !== asHeard(words))
    .map((other) => ({ other, apart: distance(words, other) }))
    .toSorted((a, b) => a.apart - b.apart || a.other.localeCompare(b.other))
    .slice(0, count)
    .map(({ other }) => other);

/** Numbers that one misheard digit makes of this one, or a ten taken for a teen; in reading order. */
export function takenFor(n: number): readonly number[] {
  const written = String(n);
  const others = new Set<number>();
  for (const [i, digit] of [...written].entries()) {
    if (digit === '.') continue;
    for (const by of [1, 9, 4, 5]) {
      const other = `${written.slice(0, i)}${(Number(digit) + by) % 10}${written.slice(i + 1)}`;
      if (!/^0\d/.test(other)) others.add(Number(other));
    }
  }
  const rest = n % 100;
  if (rest >= 13 && rest <= 19) others.add(n - rest + (rest - 10) * 10);
  if (rest >= 30 && rest % 10 === 0) others.add(n - rest + 10 + rest / 10);
  others.delete(n);
  return [...others].toSorted((a, b) => a - b);
}
