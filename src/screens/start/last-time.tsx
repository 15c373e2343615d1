import { createMemo, createResource, type Accessor, type JSX } from 'solid-js';
import type { Formula } from '../../core/formula/formula.ts';
import { unbroken } from '../../parts/unbroken.ts';
import type { House } from '../house.ts';

/** Letters that have room above the questions: in two lines, and in one, beside another line. */
const LETTERS = { alone: 66, beside: 46 } as const;

/**
 * What the last bake of the chosen bread left, and under it, as small, whatever else is told there: no press
 * goes out of sight for it. Null: it left nothing. Its words come once a bread was chosen: the first page does
 * not wait for them.
 */
export function makeLastTime(
  house: House,
  bread: Accessor<Formula | null>,
  beside: Accessor<string | undefined>,
): Accessor<JSX.Element> {
  const [told] = createResource(
    () => bread() !== null,
    () => import('../last-told.ts'),
  );
  return createMemo(() => {
    const [words, formula] = [told.latest, bread()];
    const other = beside();
    const most = other === undefined ? LETTERS.alone : LETTERS.beside;
    const last = words && formula ? words.lastTold(house, formula.id, most) : null;
    return (
      last && (
        <div class="start-last">
          <p>{unbroken(last)}</p>
          {other && <p>{unbroken(other)}</p>}
        </div>
      )
    );
  });
}
