/** What a screen may look like: each name with its choices. */
export type Ways = Readonly<Record<string, readonly string[]>>;
export type Way<W extends Ways> = { readonly [K in keyof W]: W[K][number] };

/** Every way there is. */
export function everyWay<W extends Ways>(ways: W): Way<W>[] {
  return Object.entries(ways).reduce<Record<string, string>[]>(
    (rows, [name, choices]) =>
      rows.flatMap((row) => choices.map((choice) => ({ ...row, [name]: choice }))),
    [{}],
  ) as Way<W>[];
}

const pairsOf = (row: Readonly<Record<string, string>>): string[] => {
  const told = Object.entries(row).map(([name, choice]) => `${name}=${choice}`);
  return told.flatMap((one, i) => told.slice(i + 1).map((other) => `${one} ${other}`));
};

/**
 * Few ways in which every choice meets every choice of another name at least once: each next one is the
 * way that has most pairs not met yet.
 */
export function pairwise<W extends Ways>(ways: W): Way<W>[] {
  const all = everyWay(ways);
  const left = new Set(all.flatMap(pairsOf));
  const rows: Way<W>[] = [];
  while (left.size > 0) {
    const news = (row: Way<W>): number => pairsOf(row).filter((pair) => left.has(pair)).length;
    const best = all.reduce((a, b) => (news(b) > news(a) ? b : a));
    pairsOf(best).forEach((pair) => left.delete(pair));
    rows.push(best);
  }
  return rows;
}
