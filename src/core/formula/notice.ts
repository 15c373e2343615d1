/**
 * Something to tell the baker about a formula: a key of the catalogue and the numbers that belong
 * to it. Also the shape of a reason why there is no recipe.
 */
export interface Notice {
  readonly key: string;
  readonly values: Readonly<Record<string, number | string>>;
}
