import { CIRCLE, type Circle } from './circle.ts';

/** The lists of a circle, each of its things under an id of its own. */
export const LISTS = ['neighbours', 'orders', 'standing', 'ingredients'] as const;
export type ListName = (typeof LISTS)[number];

export type Thing<L extends ListName> = Circle[L][number];

/** One change of a list: a thing put in or in another's place by its id, or (null) taken out. */
export type Put = {
  [L in ListName]: { readonly list: L; readonly id: string; readonly thing: Thing<L> | null };
}[ListName];

/** What one press changes, all of it or nothing; each thing at most once. */
export interface Change {
  readonly puts: readonly Put[];
  readonly ways?: Partial<Circle['ways']>;
}

export const put = <L extends ListName>(list: L, thing: Thing<L>): Put =>
  ({ list, id: thing.id, thing }) as unknown as Put;
export const drop = (list: ListName, id: string): Put => ({ list, id, thing: null }) as Put;

const withPut = (circle: Circle, { list, id, thing }: Put): Circle => {
  const old: readonly { readonly id: string }[] = circle[list];
  const at = old.findIndex((one) => one.id === id);
  const fresh = thing === null ? [] : [thing];
  const next = at < 0 ? [...old, ...fresh] : old.toSpliced(at, 1, ...fresh);
  return { ...circle, [list]: next };
};

/** The circle after a change; what is there is replaced in its place, what is new comes last. */
export function changed(circle: Circle, { puts, ways }: Change): Circle {
  const next = puts.reduce(withPut, circle);
  return ways ? { ...next, ways: { ...next.ways, ...ways } } : next;
}

/** What would undo a change of this circle. */
export function inverse(circle: Circle, { puts, ways }: Change): Change {
  const back = puts.map(({ list, id }): Put => {
    const old: readonly { readonly id: string }[] = circle[list];
    return { list, id, thing: old.find((one) => one.id === id) ?? null } as Put;
  });
  const was = Object.keys(ways ?? {}).map((key) => [key, circle.ways[key as keyof Circle['ways']]]);
  return {
    puts: back.toReversed(),
    ...(ways ? { ways: Object.fromEntries(was) as Partial<Circle['ways']> } : {}),
  };
}

/** A circle of nothing but its changes. */
export const circleOf = (changes: readonly Change[]): Circle => changes.reduce(changed, CIRCLE);
