import { createMemo, type Accessor } from 'solid-js';
import type { CircleWays, Ingredient } from '../../../core/circle/circle.ts';
import { cupboardOf } from '../../../core/circle/cupboard.ts';
import { drop, put, type Change } from '../../../core/circle/row.ts';
import { stockOf, takenBy, type There } from '../../../core/circle/stock.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { written } from '../written.ts';

/** The store cupboard as its pages see it. */
export interface Store {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly formulas: Accessor<readonly Formula[]>;
  /** By name; those too that nobody has said anything of. */
  readonly ingredients: Accessor<readonly Ingredient[]>;
  ingredient(id: string): Ingredient | null;
  there(id: string): There;
  /** Keeps what was said of ingredients; false where it could not be written: then it is told. */
  keep(...ingredients: readonly Ingredient[]): Promise<boolean>;
  /** Whether no bread of the Book has it: then it may be taken off the list. */
  isSpare(id: string): boolean;
  drop(id: string): Promise<boolean>;
  keepWays(ways: Partial<CircleWays>): Promise<boolean>;
}

/** What bakes took is gathered once for all its pages. */
export function openStore(house: House, circle: HouseCircle): Store {
  const formulas = createMemo(() =>
    house.formulas().flatMap(({ formula }) => (formula === null ? [] : [formula])),
  );
  const ingredients = createMemo(() => cupboardOf(circle.circle().ingredients, formulas()));
  const taken = createMemo(() => takenBy(house.records()));
  const stock = createMemo(() => stockOf(circle.circle().ingredients, taken()));
  const byId = createMemo(() => new Map(ingredients().map((one) => [one.id, one])));
  const inBook = createMemo(() => new Set(cupboardOf([], formulas()).map(({ id }) => id)));
  const write = (change: Change): Promise<boolean> => written(house, circle.write(change));
  return {
    house,
    circle,
    formulas,
    ingredients,
    ingredient: (id) => byId().get(id) ?? null,
    there: (id) => stock()(id),
    keep: (...all) => write({ puts: all.map((one) => put('ingredients', one)) }),
    isSpare: (id) => !inBook().has(id),
    drop: (id) => write({ puts: [drop('ingredients', id)] }),
    keepWays: (ways) => write({ puts: [], ways }),
  };
}
