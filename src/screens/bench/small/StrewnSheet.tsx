import { createMemo, type JSX } from 'solid-js';
import { sheetRows } from '../../../core/formula/sheet-rows.ts';
import { fill } from '../../../core/speech/fill.ts';
import { sheet } from '../../../core/speech/words/sheet.ts';
import { SheetGrid } from '../../../parts/SheetGrid.tsx';
import type { House } from '../../house.ts';
import { cellWords } from '../cell-words.ts';
import type { BenchView } from '../view.ts';

/** In more cells than this a number is too small to be read from a chair. */
const MOST_TOLD = 4;

/** The sheet of dough that the filling at hand is scattered over: a cell a loaf, with what it gets of it. */
export function StrewnSheet(props: {
  readonly house: House;
  readonly view: BenchView;
}): JSX.Element {
  const bake = () => props.house.kitchen().bakes[props.view.bake]?.context;
  const count = (): number => bake()?.loaves.length ?? 1;
  /** The filling that the slab answers; all of them where it answers none. */
  const fillings = createMemo(() => {
    const all = cellWords(bake()?.recipe.lines.filling ?? [], count(), props.house.ways());
    const { deed } = props.view.slab;
    const present = all.filter(({ item }) => deed?.kind === 'press' && deed.item === item);
    return present.length > 0 ? present : all;
  });
  const isTold = (): boolean => count() <= MOST_TOLD && fillings().length === 1;
  return (
    <div class="small-sheet">
      <SheetGrid
        rows={sheetRows(count())}
        cells={isTold() ? (fillings()[0]?.cells ?? []).map((cell) => [cell]) : []}
        alt={fill(sheet.alt, {
          count: count(),
          name: fillings()
            .map(({ told }) => told)
            .join(', '),
        })}
      />
    </div>
  );
}
