import { createSignal, type Accessor } from 'solid-js';
import type { BakeQuery } from '../../../core/log/find-bakes.ts';

/** By what a bake is chosen, one value of each. */
export type FoundBy = 'month' | 'formula' | 'tag' | 'turned';
export const FOUND_BY: readonly FoundBy[] = ['month', 'formula', 'turned', 'tag'];

/** Which page of the list is on show. */
export type ListPage = 'bakes' | 'find' | FoundBy;

/** What is looked for, and where one stood: it outlives the list, while a bake of it is looked at. */
export interface Finding {
  readonly query: Accessor<BakeQuery>;
  type(text: string): void;
  /** Null: any. */
  choose(by: FoundBy, value: string | null): void;
  showHidden(shown: boolean): void;
  /** All but whether hidden ones are shown. */
  clear(): void;
  /** Whether any bake is left out by what is looked for. */
  readonly isAsked: Accessor<boolean>;
  readonly page: Accessor<ListPage>;
  turn(page: ListPage): void;
  /** The first row in sight. */
  top: number;
}

/** Made anew with each opening of the Log: it begins with all bakes, at the latest. */
export function makeFinding(): Finding {
  const [query, setQuery] = createSignal<BakeQuery>({});
  const [page, setPage] = createSignal<ListPage>('bakes');
  const without = (by: FoundBy): BakeQuery => {
    const { [by]: _, ...rest } = query();
    return rest;
  };
  return {
    query,
    type: (text) => void setQuery({ ...query(), text }),
    choose: (by, value) =>
      void setQuery(value === null ? without(by) : { ...query(), [by]: value }),
    showHidden: (hidden) => void setQuery({ ...query(), hidden }),
    clear: () => void setQuery({ hidden: query().hidden ?? false }),
    isAsked: () => {
      const { text = '', ...asked } = query();
      return text.trim() !== '' || FOUND_BY.some((by) => asked[by] !== undefined);
    },
    page,
    turn: (next) => void setPage(next),
    top: 0,
  };
}
