import { createMemo, type Accessor, type Signal } from 'solid-js';
import type { Formula } from '../../core/formula/formula.ts';
import { JOINS, type Join } from '../../core/records/stage.ts';
import { joinsOf } from '../../core/records/stages-of.ts';
import type { House } from '../house.ts';
import { checkOrder, emptyDraft, type Draft } from './draft.ts';

/** What the start page has gathered, and what it comes to. */
export interface Chosen {
  readonly draft: Accessor<Draft>;
  /** The one that was picked, else the first there is. */
  readonly formula: Accessor<Formula | null>;
  readonly checked: Accessor<ReturnType<typeof checkOrder>>;
  /** Where a bake of this formula may begin. */
  readonly joins: Accessor<readonly Join[]>;
  change(part: Partial<Draft>): void;
}

/** @param kept null: nothing was chosen yet; it outlives the page */
export function makeChosen(house: House, [kept, keep]: Signal<Draft | null>): Chosen {
  const draft = (): Draft => kept() ?? emptyDraft;
  const formula = createMemo(() => {
    const good = house.formulas().flatMap((found) => found.formula ?? []);
    return good.find(({ id }) => id === draft().formula) ?? good[0] ?? null;
  });
  const joins = (): readonly Join[] => {
    const its = formula();
    return its ? joinsOf(its.process) : JOINS;
  };
  return {
    draft,
    formula,
    checked: createMemo(() => checkOrder(draft(), formula(), house.ways())),
    joins,
    change(part) {
      keep({ ...draft(), ...part });
      // Another formula may not pass where the dough was said to be.
      if (!joins().includes(draft().from)) keep({ ...draft(), from: emptyDraft.from });
    },
  };
}
