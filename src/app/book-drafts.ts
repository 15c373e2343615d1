import { createSignal } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Formula } from '../core/formula/formula.ts';
import { readFormula } from '../core/formula/read-formula.ts';
import type { House } from '../screens/house.ts';

const NAME = 'bookDrafts';

/**
 * Formulas that are being changed and were not kept yet, by their id: on this tablet across a reload,
 * in no fact. What cannot be read of them was never begun.
 *
 * @param keeps false in a rehearsal and in a page that only shows the kitchen
 */
export async function openDrafts(
  settings: Settings,
  keeps: boolean,
): Promise<Pick<House, 'drafts' | 'keepDraft'>> {
  const stored = keeps ? await settings.get(NAME).catch(() => null) : null;
  const good = (Array.isArray(stored) ? stored : []).flatMap((one) => {
    const { formula } = readFormula(one);
    return formula === null ? [] : [formula];
  });
  const [drafts, setDrafts] = createSignal<Readonly<Record<string, Formula>>>(
    Object.fromEntries(good.map((formula) => [formula.id, formula])),
  );
  return {
    drafts,
    keepDraft(id, formula) {
      const { [id]: _, ...others } = drafts();
      const next = formula === null ? others : { ...others, [id]: formula };
      setDrafts(next);
      if (keeps) void settings.set(NAME, Object.values(next)).catch(() => undefined);
    },
  };
}
