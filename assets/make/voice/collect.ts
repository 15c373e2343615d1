/** A text of the catalogue, with the file and the keys it was found under. */
export interface Found {
  readonly where: string;
  readonly text: string;
}

/** Keys whose strings the log or the machines keep: they are not words for anyone. */
const NOT_WORDS = ['value', 'item', 'JOINS'];

/** Every text inside what a file of the catalogue exports. */
export const collect = (value: unknown, where: string): readonly Found[] => {
  if (typeof value === 'string') return [{ where, text: value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    NOT_WORDS.includes(key) ? [] : collect(inner, `${where}.${key}`),
  );
};
