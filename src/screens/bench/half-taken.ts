import { createEffect, on, untrack, type Accessor } from 'solid-js';
import type { ReadingPage } from './readings/page.ts';

/**
 * A reading half taken stays with its own bake: it is there again when that one is on show, and gone
 * with the act it was begun at. The page of the pots is of no act: it stays open over them, until
 * something rings, which is to be seen at once. `onTurn` is called whenever act or bake change.
 */
export function keepHalfTaken(parts: {
  readonly key: Accessor<string | null>;
  readonly bake: Accessor<string>;
  readonly rings: Accessor<boolean>;
  readonly page: Accessor<ReadingPage | null>;
  readonly setPage: (page: ReadingPage | null) => void;
  readonly onTurn: () => void;
}): void {
  const turned = new Map<string, ReadingPage>();
  createEffect(
    on([parts.key, parts.bake], ([at, bake], before) => {
      parts.onTurn();
      const left = untrack(parts.page);
      if (before && left && before[1] !== bake) turned.set(before.join(' '), left);
      else if (before) turned.delete(before.join(' '));
      if (left?.at === 'pots' && before?.[1] === bake && !untrack(parts.rings)) return;
      parts.setPage(turned.get(`${at} ${bake}`) ?? null);
    }),
  );
  createEffect(
    on(parts.rings, (rings) => {
      if (rings && untrack(parts.page)?.at === 'pots') parts.setPage(null);
    }),
  );
}
